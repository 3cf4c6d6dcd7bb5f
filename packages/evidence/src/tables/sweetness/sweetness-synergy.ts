// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Do sweeteners help each other?. */
export const sweetnessSynergyTable = {
  id: 'sweetness-synergy',
  title: 'Do sweeteners help each other?',
  source: {
    authors: 'several',
    year: '1989 to 2015',
    title: 'Named in the rows',
    locator: 'see rows',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {
    overConstantPotency: 'ratio',
    overSummedResponse: 'ratio',
    recommendedMost: 'ratio',
  },
  rows: [
    { pair: 'acesulfame-k + aspartame', overConstantPotency: 1.6, overSummedResponse: 1.5, recommendedMost: 1.35, note: 'The row of the tabletop table behind it looks misprinted.', grade: 'memory' },
    { pair: 'cyclamate + saccharin (10:1)', overConstantPotency: 1.46, overSummedResponse: 1.01, recommendedMost: 1.1, grade: 'derived' },
    { pair: 'aspartame + saccharin (1:3)', overConstantPotency: 1.81, overSummedResponse: 1.02, recommendedMost: 1.1, grade: 'derived' },
    { pair: 'aspartame + saccharin + cyclamate', overConstantPotency: 1.87, overSummedResponse: 1.33, recommendedMost: 1.3, grade: 'derived' },
    { pair: 'xylitol + sorbitol', overConstantPotency: null, overSummedResponse: 1.05, recommendedMost: 1.2, grade: 'memory' },
    { pair: 'maltitol or isomalt + high-intensity', overConstantPotency: null, overSummedResponse: 1, recommendedMost: 1.2, grade: 'memory' },
    { pair: 'sucrose + fructose (equal)', overConstantPotency: null, overSummedResponse: 1, recommendedMost: 1.1, grade: 'memory' },
    { pair: 'any two of nine sweeteners', overConstantPotency: null, overSummedResponse: 1, recommendedMost: null, note: 'Frank, Mize and Carter 1989: above additive when dilute, additive in the middle, below it when strong; 18 of 31 pairs.', grade: 'secondary' },
    { pair: 'intense + bulk in milk or coffee', overConstantPotency: null, overSummedResponse: 1, recommendedMost: 1, note: 'Choi and Chung 2015: additive in milk, less in coffee.', grade: 'secondary' },
  ],
  notes: [
    'Most of what is called synergy is the bending of each dose curve: adding the responses already gives it.',
  ],
  check: {
    rows: 9,
    sums: {
      overConstantPotency: 6.74,
      overSummedResponse: 9.91,
      recommendedMost: 9.35,
    },
  },
} as const satisfies EvidenceTable;
