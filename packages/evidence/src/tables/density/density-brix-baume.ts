// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Brix to Baumé at 20 °C. */
export const densityBrixBaumeTable = {
  id: 'density-brix-baume',
  title: 'Brix to Baumé at 20 °C',
  source: {
    authors: 'Mohos, F.A.',
    year: '2010',
    title: 'Confectionery and Chocolate Engineering',
    locator: 'Appendix 2, Table A2.1',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: { brix: 'g per 100 g', baume: 'degree' },
  constants: { equation: 'Baumé = 145 − 145/(relative density 20/20)' },
  rows: [
    { brix: 5, baume: 2.8 },
    { brix: 10, baume: 5.57 },
    { brix: 15, baume: 8.34 },
    { brix: 20, baume: 11.1 },
    { brix: 30, baume: 16.6 },
    { brix: 40, baume: 22 },
    { brix: 50, baume: 27.5, note: 'Rounded by hand: 0.2 off the curve of the rows with two decimals.', suspect: true },
    { brix: 60, baume: 32.49 },
    { brix: 65, baume: 35.04 },
    { brix: 70, baume: 37.6 },
    { brix: 75, baume: 40.3, note: 'Rounded by hand: 0.2 off the curve of the rows with two decimals.', suspect: true },
    { brix: 80, baume: 42.47 },
    { brix: 85, baume: 44.86 },
    { brix: 90, baume: 47.4, note: 'Rounded by hand: 0.16 off the curve of the rows with two decimals.', suspect: true },
  ],
  tolerance: {
    text: '0.05 on rows printed with two decimals, 0.25 on the others.',
    limits: [
      { column: 'baume', worst: 0.25, rows: { column: 'brix', is: [20, 30, 40, 50, 70, 75, 90] } },
      { column: 'baume', worst: 0.05 },
    ],
  },
  notes: [
    'The modulus 145 fits the rows with two decimals to 0.04; 144.3 is an older scale.',
    '20, 30, 40, 50, 70, 75 and 90 Brix are printed with one decimal.',
  ],
  smooth: [
    { x: 'brix', y: 'baume' },
  ],
  check: {
    rows: 14,
    sums: {
      brix: 695,
      baume: 374.07,
    },
  },
} as const satisfies EvidenceTable;
