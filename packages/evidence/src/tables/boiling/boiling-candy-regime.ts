// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Boiling points of concentrated sucrose, as textbooks reproduce them. */
export const boilingCandyRegimeTable = {
  id: 'boiling-candy-regime',
  title: 'Boiling points of concentrated sucrose, as textbooks reproduce them',
  source: {
    authors: 'Paul, Palmer; Junk, Pancoast and others',
    year: '1972',
    title: 'Boiling points of sucrose solutions, as reproduced in food-science texts',
    locator: 'table',
  },
  grade: 'memory',
  did: 'Recalled from textbooks; good to the printed digit in most rows, not guaranteed.',
  units: { drySolidsPercent: '% m/m', boilingPointC: '°C' },
  rows: [
    { drySolidsPercent: 40, boilingPointC: 101 },
    { drySolidsPercent: 50, boilingPointC: 102 },
    { drySolidsPercent: 60, boilingPointC: 103 },
    { drySolidsPercent: 70, boilingPointC: 106 },
    { drySolidsPercent: 80, boilingPointC: 112 },
    { drySolidsPercent: 90, boilingPointC: 123 },
    { drySolidsPercent: 95, boilingPointC: 140 },
    { drySolidsPercent: 97, boilingPointC: 151 },
    { drySolidsPercent: 98.2, boilingPointC: 160, note: 'The slopes 97 to 98.2, 98.2 to 99.5 and 99.5 to 99.6 % are 7.5, 4.6 and 50 °C per per cent: this row or the next is wrong.', suspect: true },
    { drySolidsPercent: 99.5, boilingPointC: 166, note: 'See the row above: one of the two does not lie on a smooth curve.', suspect: true },
    { drySolidsPercent: 99.6, boilingPointC: 171 },
  ],
  tolerance: {
    text: 'Every row within 6 °C and root mean square within 2.3 °C.',
    limits: [
      { column: 'boilingPointC', worst: 6, rms: 2.3 },
    ],
  },
  notes: [
    'Not used to fit the boiling model.',
    'Mark it as recalled wherever it shows.',
  ],
  smooth: [
    { x: 'drySolidsPercent', y: 'boilingPointC' },
  ],
  check: {
    rows: 11,
    sums: {
      drySolidsPercent: 879.3,
      boilingPointC: 1435,
    },
  },
} as const satisfies EvidenceTable;
