import type { EvidenceTable } from '../../types.js';

/** Glucose solutions as sweet as sucrose solutions. */
export const sweetnessGlucoseConcentrationTable = {
  id: 'sweetness-glucose-concentration',
  title: 'Glucose solutions as sweet as sucrose solutions',
  source: {
    authors: 'unsigned trade page',
    year: 'n.d.',
    title: 'Sweetness of glucose',
    locator: 'in the text',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    glucosePercent: '% m/m',
    sucrosePercent: '% m/m',
    relativeSweetness: 'sucrose = 1',
  },
  constants: { equation: '1 − 0.4206 exp(−0.07481 R), R in % sucrose equivalence' },
  rows: [
    { glucosePercent: 12.7, sucrosePercent: 10, relativeSweetness: 0.787 },
    { glucosePercent: 21.8, sucrosePercent: 20, relativeSweetness: 0.917 },
    { glucosePercent: 31.5, sucrosePercent: 30, relativeSweetness: 0.952 },
    { glucosePercent: 40, sucrosePercent: 40, relativeSweetness: 1 },
  ],
  tolerance: {
    text: '0.014 over 10 to 30 %.',
    limits: [
      {
        column: 'relativeSweetness',
        worst: 0.014,
        rows: { column: 'sucrosePercent', from: 10, to: 30 },
      },
    ],
  },
  notes: [
    'The largest residual of the fit is 0.014 over 10 to 30 %.',
    'A panel study found constant slopes for glucose and fructose instead.',
  ],
  check: {
    rows: 4,
    sums: {
      glucosePercent: 106,
      sucrosePercent: 100,
      relativeSweetness: 3.656,
    },
  },
} as const satisfies EvidenceTable;
