// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** What inversion costs a 60:40 sweet at 2.0 % water. */
export const inversionTgCostTable = {
  id: 'inversion-tg-cost',
  title: 'What inversion costs a 60:40 sweet at 2.0 % water',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with the boiling model and the glass model',
    locator: '60 sucrose, 40 solids of 42 DE syrup',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    sucroseInvertedPercent: '%',
    lateWaterPercent: '% m/m',
    lateNowC: '°C',
    lateAfterRegainC: '°C',
    earlyWaterPercent: '% m/m',
    earlyC: '°C',
    stopFor2PercentC: '°C',
  },
  rows: [
    { sucroseInvertedPercent: 0, lateWaterPercent: 2, lateNowC: 52.3, lateAfterRegainC: 52.3, earlyWaterPercent: 2, earlyC: 52.3, stopFor2PercentC: 152.3 },
    { sucroseInvertedPercent: 10, lateWaterPercent: 1.69, lateNowC: 52.4, lateAfterRegainC: 49.4, earlyWaterPercent: 2.08, earlyC: 48.6, stopFor2PercentC: 152.7 },
    { sucroseInvertedPercent: 20, lateWaterPercent: 1.38, lateNowC: 52.6, lateAfterRegainC: 46.7, earlyWaterPercent: 2.16, earlyC: 45.1, stopFor2PercentC: 153.1 },
    { sucroseInvertedPercent: 50, lateWaterPercent: 0.45, lateNowC: 52.9, lateAfterRegainC: 38.7, earlyWaterPercent: 2.4, earlyC: 35.4, stopFor2PercentC: 154.2 },
  ],
  tolerance: {
    text: '0.3 K; 0.05 % of water.',
    limits: [
      { column: 'lateWaterPercent', worst: 0.05 },
      { column: 'lateNowC', worst: 0.3 },
      { column: 'lateAfterRegainC', worst: 0.3 },
      { column: 'earlyWaterPercent', worst: 0.05 },
      { column: 'earlyC', worst: 0.3 },
      { column: 'stopFor2PercentC', worst: 0.3 },
    ],
  },
  notes: [
    'Glass transitions. Late: acid after the cook, which eats water. Early: inverted before the end of the boil, same stop temperature.',
    'Late inversion costs nothing at once; it costs when the piece takes its water back.',
  ],
  check: {
    rows: 4,
    sums: {
      sucroseInvertedPercent: 80,
      lateWaterPercent: 5.52,
      lateNowC: 210.2,
      lateAfterRegainC: 187.1,
      earlyWaterPercent: 8.64,
      earlyC: 181.4,
      stopFor2PercentC: 612.3,
    },
  },
} as const satisfies EvidenceTable;
