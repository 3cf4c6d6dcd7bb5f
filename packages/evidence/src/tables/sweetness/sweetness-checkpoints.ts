import type { EvidenceTable } from '../../types.js';

/** Potency of aspartame at three strengths. */
export const sweetnessCheckpointsTable = {
  id: 'sweetness-checkpoints',
  title: 'Potency of aspartame at three strengths',
  source: {
    authors: 'trade article',
    year: 'n.d.',
    title: 'Sweetening systems',
    locator: 'in the text',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    sucroseEquivalencePercent: '% sucrose',
    potency: '× sucrose',
    temperatureC: '°C',
  },
  rows: [
    { sweetener: 'aspartame', sucroseEquivalencePercent: 4.3, potency: 200, temperatureC: null },
    { sweetener: 'aspartame', sucroseEquivalencePercent: 10, potency: 130, temperatureC: 22.2 },
    { sweetener: 'aspartame', sucroseEquivalencePercent: 10, potency: 160, temperatureC: 7.8 },
  ],
  tolerance: {
    text: '25 %.',
    limits: [
      {
        column: 'potency',
        worst: 0.25,
        relative: true,
        rows: { column: 'potency', is: [200, 130] },
      },
    ],
  },
  notes: ['The cold row is left out of any error figure.'],
  check: {
    rows: 3,
    sums: {
      sucroseEquivalencePercent: 24.3,
      potency: 490,
      temperatureC: 30,
    },
  },
} as const satisfies EvidenceTable;
