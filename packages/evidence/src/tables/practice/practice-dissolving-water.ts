// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Water needed to dissolve the sugar. */
export const practiceDissolvingWaterTable = {
  id: 'practice-dissolving-water',
  title: 'Water needed to dissolve the sugar',
  source: {
    authors: 'Charles, D.F.; Vavrinecz, G.',
    year: '1960; 1962',
    title: 'Solubility of pure sucrose in water, Int. Sugar J. 62:126; polynomial of Vavrinecz',
    locator: '0 to 100 °C',
  },
  grade: 'derived',
  did: 'The first polynomial is recalled; rows computed.',
  units: {
    waterPer100GSucroseG: 'g',
    drySolidsPercent: '% m/m',
    dissolvedByCharlesC: '°C',
    dissolvedByVavrineczC: '°C',
  },
  rows: [
    { waterPer100GSucroseG: 25, drySolidsPercent: 80, dissolvedByCharlesC: 85.6, dissolvedByVavrineczC: 86.2 },
    { waterPer100GSucroseG: 30, drySolidsPercent: 76.9, dissolvedByCharlesC: 72.1, dissolvedByVavrineczC: 72 },
    { waterPer100GSucroseG: 33, drySolidsPercent: 75.2, dissolvedByCharlesC: 64.4, dissolvedByVavrineczC: 64.2 },
    { waterPer100GSucroseG: 35, drySolidsPercent: 74.1, dissolvedByCharlesC: 59.4, dissolvedByVavrineczC: 59.1 },
    { waterPer100GSucroseG: 40, drySolidsPercent: 71.4, dissolvedByCharlesC: 47.1, dissolvedByVavrineczC: 46.7 },
    { waterPer100GSucroseG: 50, drySolidsPercent: 66.7, dissolvedByCharlesC: 20.5, dissolvedByVavrineczC: 19.6 },
  ],
  tolerance: { text: '0.1 K.' },
  notes: [
    'Glucose syrup lowers the solubility a little; its own water makes up for it.',
    'Isomalt is known at 20 and 50 °C only: boil until clear.',
  ],
  smooth: [
    { x: 'waterPer100GSucroseG', y: 'dissolvedByVavrineczC' },
  ],
  check: {
    rows: 6,
    sums: {
      waterPer100GSucroseG: 213,
      drySolidsPercent: 444.3,
      dissolvedByCharlesC: 349.1,
      dissolvedByVavrineczC: 347.8,
    },
  },
} as const satisfies EvidenceTable;
