// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** A printed sucrose boiling table of a confectionery course. */
export const stagesBoilingCrosscheckTable = {
  id: 'stages-boiling-crosscheck',
  title: 'A printed sucrose boiling table of a confectionery course',
  source: {
    authors: 'Byrne, R., after Lees and Jackson',
    year: 'n.d.',
    title: 'Sugar Confectionery Principles, college notes',
    locator: 'Table 1',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    drySolidsPercent: '% m/m',
    boilingPointC: '°C',
    boilingPointF: '°F',
  },
  rows: [
    { drySolidsPercent: 40, boilingPointC: 101.4, boilingPointF: 214.5 },
    { drySolidsPercent: 50, boilingPointC: 101.9, boilingPointF: 215.4 },
    { drySolidsPercent: 60, boilingPointC: 103, boilingPointF: 217.4 },
    { drySolidsPercent: 70, boilingPointC: 105.5, boilingPointF: 221.9 },
    { drySolidsPercent: 75, boilingPointC: 108.3, boilingPointF: 226.9 },
    { drySolidsPercent: 80, boilingPointC: 111.1, boilingPointF: 232 },
    { drySolidsPercent: 85, boilingPointC: 116.1, boilingPointF: 241 },
    { drySolidsPercent: 90, boilingPointC: 122.2, boilingPointF: 252 },
    { drySolidsPercent: 95, boilingPointC: 130, boilingPointF: 266, note: '130.0 °C at 95 % stands against 139 to 140 °C in two other tables and against 1 to 3 % water in sweets boiled to 145 to 152 °C.', suspect: true },
  ],
  tolerance: { text: 'Shown, not gated.' },
  notes: [
    'The same figures are printed in Lees and Jackson 1973 (recalled).',
    'The model lies within 0.5 °C to 70 % and at 90 %, 1.5 to 1.9 °C lower at 75 to 85 %, and 9 °C higher at 95 %.',
  ],
  smooth: [
    { x: 'drySolidsPercent', y: 'boilingPointC' },
  ],
  check: {
    rows: 9,
    sums: {
      drySolidsPercent: 645,
      boilingPointC: 999.5,
      boilingPointF: 2087.1,
    },
  },
} as const satisfies EvidenceTable;
