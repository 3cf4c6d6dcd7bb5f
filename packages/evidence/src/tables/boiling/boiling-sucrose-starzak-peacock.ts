// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Boiling points of sucrose by a published activity-coefficient correlation. */
export const boilingSucroseStarzakPeacockTable = {
  id: 'boiling-sucrose-starzak-peacock',
  title: 'Boiling points of sucrose by a published activity-coefficient correlation',
  source: {
    authors: 'Starzak, M.; Peacock, S.D.',
    year: '1997',
    title: 'Water activity coefficient in aqueous solutions of sucrose: a comprehensive data analysis, Zuckerindustrie 122:380',
    locator: 'equation and constants Q, a, b',
  },
  grade: 'secondary',
  did: 'Constants seen in an industry summary; rows computed from them.',
  units: {
    drySolidsPercent: '% m/m',
    boilingPointAt101KPaC: '°C at 101.325 kPa',
    boilingPointAt60KPaC: '°C at 60 kPa',
    boilingPointAt20KPaC: '°C at 20 kPa',
  },
  constants: {
    equation: 'ln γw = Q/(RT) · x² (1 + a x + b x²), x mole fraction of sucrose',
    qJPerMol: -17638,
    a: -1.0038,
    b: -0.24653,
    gasConstantJPerMolK: 8.314,
  },
  rows: [
    { drySolidsPercent: 20, boilingPointAt101KPaC: 100.37, boilingPointAt60KPaC: 86.29, boilingPointAt20KPaC: 60.36 },
    { drySolidsPercent: 40, boilingPointAt101KPaC: 101.12, boilingPointAt60KPaC: 86.98, boilingPointAt20KPaC: 60.96 },
    { drySolidsPercent: 50, boilingPointAt101KPaC: 101.8, boilingPointAt60KPaC: 87.61, boilingPointAt20KPaC: 61.5 },
    { drySolidsPercent: 60, boilingPointAt101KPaC: 102.91, boilingPointAt60KPaC: 88.64, boilingPointAt20KPaC: 62.4 },
    { drySolidsPercent: 65, boilingPointAt101KPaC: 103.77, boilingPointAt60KPaC: 89.44, boilingPointAt20KPaC: 63.09 },
    { drySolidsPercent: 70, boilingPointAt101KPaC: 104.96, boilingPointAt60KPaC: 90.55, boilingPointAt20KPaC: 64.06 },
    { drySolidsPercent: 75, boilingPointAt101KPaC: 106.72, boilingPointAt60KPaC: 92.19, boilingPointAt20KPaC: 65.49 },
    { drySolidsPercent: 80, boilingPointAt101KPaC: 109.44, boilingPointAt60KPaC: 94.73, boilingPointAt20KPaC: 67.71 },
    { drySolidsPercent: 85, boilingPointAt101KPaC: 113.99, boilingPointAt60KPaC: 98.99, boilingPointAt20KPaC: 71.44 },
    { drySolidsPercent: 90, boilingPointAt101KPaC: 122.41, boilingPointAt60KPaC: 106.83, boilingPointAt20KPaC: 78.31 },
    { drySolidsPercent: 92, boilingPointAt101KPaC: 127.79, boilingPointAt60KPaC: 111.84, boilingPointAt20KPaC: 82.67 },
    { drySolidsPercent: 94, boilingPointAt101KPaC: 134.98, boilingPointAt60KPaC: 118.51, boilingPointAt20KPaC: 88.44 },
    { drySolidsPercent: 95, boilingPointAt101KPaC: 139.37, boilingPointAt60KPaC: 122.57, boilingPointAt20KPaC: 91.9 },
    { drySolidsPercent: 96, boilingPointAt101KPaC: 144.27, boilingPointAt60KPaC: 127.05, boilingPointAt20KPaC: 95.67 },
    { drySolidsPercent: 97, boilingPointAt101KPaC: 149.41, boilingPointAt60KPaC: 131.68, boilingPointAt20KPaC: 99.44 },
    { drySolidsPercent: 98, boilingPointAt101KPaC: 154.18, boilingPointAt60KPaC: 135.79, boilingPointAt20KPaC: 102.47, note: 'The 20 kPa column leaves its smooth course here: outside the data of the correlation.', suspect: true },
    { drySolidsPercent: 99, boilingPointAt101KPaC: 158.57, boilingPointAt60KPaC: 139.06, boilingPointAt20KPaC: 103.99, note: 'The 20 kPa column is outside the data of the correlation.', suspect: true },
  ],
  tolerance: {
    text: '0.8 °C at 101.325 kPa and 3.2 °C at 60 kPa; 20 kPa shown, not gated.',
    limits: [
      { column: 'boilingPointAt101KPaC', worst: 0.8 },
      { column: 'boilingPointAt60KPaC', worst: 3.2 },
    ],
  },
  notes: [
    'Rests on about a century of data.',
    'Below about 100 °C its water activity is not monotone above roughly 97 % solids; beyond 94 % at 20 kPa it is outside its data.',
  ],
  smooth: [
    { x: 'drySolidsPercent', y: 'boilingPointAt101KPaC' },
    { x: 'drySolidsPercent', y: 'boilingPointAt60KPaC' },
    { x: 'drySolidsPercent', y: 'boilingPointAt20KPaC' },
  ],
  check: {
    rows: 17,
    sums: {
      drySolidsPercent: 1306,
      boilingPointAt101KPaC: 2076.06,
      boilingPointAt60KPaC: 1808.75,
      boilingPointAt20KPaC: 1319.9,
    },
  },
} as const satisfies EvidenceTable;
