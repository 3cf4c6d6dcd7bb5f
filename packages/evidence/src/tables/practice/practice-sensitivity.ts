// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** What 2 °F of error means. */
export const practiceSensitivityTable = {
  id: 'practice-sensitivity',
  title: 'What 2 °F of error means',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Slope of the boiling model',
    locator: 'sucrose, 101325 Pa',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    temperatureC: '°C',
    solidsPercentPerK: '% per K',
    solidsErrorFor2FPercent: '%',
  },
  rows: [
    { at: 'thread, middle', temperatureC: 111.1, solidsPercentPerK: 1.17, solidsErrorFor2FPercent: 1.3 },
    { at: 'soft ball, middle', temperatureC: 113.9, solidsPercentPerK: 0.85, solidsErrorFor2FPercent: 0.95 },
    { at: 'firm ball, middle', temperatureC: 118.9, solidsPercentPerK: 0.56, solidsErrorFor2FPercent: 0.62 },
    { at: 'hard ball, middle', temperatureC: 125.6, solidsPercentPerK: 0.37, solidsErrorFor2FPercent: 0.41 },
    { at: 'soft crack, middle', temperatureC: 137.8, solidsPercentPerK: 0.23, solidsErrorFor2FPercent: 0.26 },
    { at: 'hard crack, middle', temperatureC: 151.7, solidsPercentPerK: 0.22, solidsErrorFor2FPercent: 0.24 },
  ],
  tolerance: { text: '0.01.' },
  notes: [
    'The fudge maker needs the better thermometer, the boiled-sweet maker the calibrated one.',
  ],
  check: {
    rows: 6,
    sums: {
      temperatureC: 759,
      solidsPercentPerK: 3.4,
      solidsErrorFor2FPercent: 3.78,
    },
  },
} as const satisfies EvidenceTable;
