// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Boiling points of sucrose solutions in an old handbook. */
export const boilingSucroseGerlachTable = {
  id: 'boiling-sucrose-gerlach',
  title: 'Boiling points of sucrose solutions in an old handbook',
  source: {
    authors: 'Browne, C.A., after Gerlach and Flourens',
    year: '1912',
    title: 'A Handbook of Sugar Analysis',
    locator: 'table of boiling points of sucrose solutions',
  },
  grade: 'secondary',
  did: 'Seen in two copies that agree.',
  units: { drySolidsPercent: '% m/m', boilingPointC: '°C at 760 mmHg' },
  rows: [
    { drySolidsPercent: 10, boilingPointC: 100.4 },
    { drySolidsPercent: 20, boilingPointC: 100.6 },
    { drySolidsPercent: 30, boilingPointC: 101 },
    { drySolidsPercent: 40, boilingPointC: 101.5 },
    { drySolidsPercent: 50, boilingPointC: 102 },
    { drySolidsPercent: 60, boilingPointC: 103, note: 'The curve bends sharply here: 1.0 °C from 50 to 60 %, 3.5 °C from 60 to 70 %. From the next row on the old figures run above every later table.', suspect: true },
    { drySolidsPercent: 70, boilingPointC: 106.5 },
    { drySolidsPercent: 72, boilingPointC: 107.4 },
    { drySolidsPercent: 74, boilingPointC: 108.4 },
    { drySolidsPercent: 76, boilingPointC: 109.4 },
    { drySolidsPercent: 78, boilingPointC: 110.6 },
    { drySolidsPercent: 80, boilingPointC: 112 },
    { drySolidsPercent: 82, boilingPointC: 113.9 },
    { drySolidsPercent: 84, boilingPointC: 116.3 },
    { drySolidsPercent: 86, boilingPointC: 119.3 },
    { drySolidsPercent: 88, boilingPointC: 123.1 },
    { drySolidsPercent: 90, boilingPointC: 127.8 },
  ],
  tolerance: { text: 'Shown, not gated.' },
  notes: [
    'Nineteenth-century figures: below 40 % they exceed what dilute solutions allow by 0.2 to 0.4 °C, from 70 to 90 % they exceed later work by 1.5 to 5 °C.',
  ],
  smooth: [
    { x: 'drySolidsPercent', y: 'boilingPointC' },
  ],
  check: {
    rows: 17,
    sums: {
      drySolidsPercent: 1090,
      boilingPointC: 1863.2,
    },
  },
} as const satisfies EvidenceTable;
