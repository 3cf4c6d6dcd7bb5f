// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Losses. */
export const practiceYieldLossTable = {
  id: 'practice-yield-loss',
  title: 'Losses',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'Common practice of the trade',
    locator: 'none',
  },
  grade: 'practice',
  did: 'Common practice of the trade; no publication stands behind it.',
  units: { lowPercent: '%', highPercent: '%' },
  rows: [
    { loss: 'pan, spoon, thermometer residue', lowPercent: 2, highPercent: 5, rule: 'a film of 25 to 40 g per litre of pan, so the share falls with the batch' },
    { loss: 'over-run, strings, tails', lowPercent: 1, highPercent: 3 },
    { loss: 'breakage, misfills', lowPercent: 0.5, highPercent: 2 },
    { loss: 'test drops (cold-water test)', lowPercent: 0.3, highPercent: 1, rule: '2 to 3 g each' },
  ],
  notes: [
    'Finished mass is solids · (1 − losses)/(1 − moisture).',
    'Evaporation is no loss of solids.',
  ],
  check: {
    rows: 4,
    sums: {
      lowPercent: 3.8,
      highPercent: 11,
    },
  },
} as const satisfies EvidenceTable;
