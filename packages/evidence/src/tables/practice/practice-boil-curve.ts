// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** 1 kg sucrose and 330 g water boiled down at 1000 W net. */
export const practiceBoilCurveTable = {
  id: 'practice-boil-curve',
  title: '1 kg sucrose and 330 g water boiled down at 1000 W net',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with the boiling model',
    locator: 'sucrose, 101325 Pa',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    drySolidsPercent: '% m/m',
    boilingPointC: '°C',
    waterLeftG: 'g',
    minutes: 'min',
    rateKPerMin: 'K/min',
    rateFPerMin: '°F/min',
  },
  rows: [
    { drySolidsPercent: 75.2, boilingPointC: 106.9, waterLeftG: 330, minutes: 0, rateKPerMin: 0.6, rateFPerMin: 1.2 },
    { drySolidsPercent: 80, boilingPointC: 109.6, waterLeftG: 250, minutes: 3.2, rateKPerMin: 1.1, rateFPerMin: 2 },
    { drySolidsPercent: 85, boilingPointC: 114.2, waterLeftG: 176, minutes: 6.1, rateKPerMin: 2.1, rateFPerMin: 3.8 },
    { drySolidsPercent: 87, boilingPointC: 116.9, waterLeftG: 149, minutes: 7.3, rateKPerMin: 2.7, rateFPerMin: 4.9 },
    { drySolidsPercent: 90, boilingPointC: 122.6, waterLeftG: 111, minutes: 9, rateKPerMin: 4.1, rateFPerMin: 7.4 },
    { drySolidsPercent: 92, boilingPointC: 128, waterLeftG: 87, minutes: 10.1, rateKPerMin: 5.4, rateFPerMin: 9.8 },
    { drySolidsPercent: 95, boilingPointC: 139.2, waterLeftG: 53, minutes: 11.8, rateKPerMin: 7.8, rateFPerMin: 14.1 },
    { drySolidsPercent: 97, boilingPointC: 148.8, waterLeftG: 31, minutes: 12.9, rateKPerMin: 8.8, rateFPerMin: 15.8 },
    { drySolidsPercent: 98, boilingPointC: 153.4, waterLeftG: 20, minutes: 13.5, rateKPerMin: 8.6, rateFPerMin: 15.5 },
  ],
  tolerance: {
    text: '0.1 °C, 2 % on minutes.',
    limits: [
      { column: 'boilingPointC', worst: 0.1 },
      { column: 'minutes', worst: 0.02, relative: true },
    ],
  },
  notes: [
    'Twice the power halves the minutes; the temperatures stay.',
    '15 kJ left in a 1 kg steel base boils about 7 g more: 98.0 becomes 98.7 %, some 3 K of carry-over.',
  ],
  smooth: [
    { x: 'drySolidsPercent', y: 'boilingPointC' },
  ],
  check: {
    rows: 9,
    sums: {
      drySolidsPercent: 799.2,
      boilingPointC: 1139.6,
      waterLeftG: 1207,
      minutes: 73.9,
      rateKPerMin: 41.2,
      rateFPerMin: 74.5,
    },
  },
} as const satisfies EvidenceTable;
