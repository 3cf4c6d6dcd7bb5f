import type { EvidenceTable } from '../../types.js';

/** Refractive index of sucrose solutions at 20 °C. */
export const densityRiIcumsa1974Table = {
  id: 'density-ri-icumsa1974',
  title: 'Refractive index of sucrose solutions at 20 °C',
  source: {
    authors: 'ICUMSA',
    year: '1974',
    title: 'SPS-3, refractive index of sucrose solutions at 20 °C, 589 nm',
    locator: 'table',
  },
  grade: 'secondary',
  did: 'Seen in a public data library.',
  units: { brix: 'g per 100 g', refractiveIndex: 'nD at 20 °C' },
  constants: {
    equation:
      'n = 1.33298723 + 0.14275328 w + 0.05474398 w² + 0.01200009 w³ + 0.01340275 w⁴ − 0.00961397 w⁵, w = Brix/100 (own fit to 85)',
  },
  rows: [
    { brix: 0, refractiveIndex: 1.33299 },
    { brix: 5, refractiveIndex: 1.34026 },
    { brix: 10, refractiveIndex: 1.34782 },
    { brix: 15, refractiveIndex: 1.35568 },
    { brix: 20, refractiveIndex: 1.36384 },
    { brix: 25, refractiveIndex: 1.37233 },
    { brix: 30, refractiveIndex: 1.38115 },
    { brix: 35, refractiveIndex: 1.39032 },
    { brix: 40, refractiveIndex: 1.39986 },
    { brix: 45, refractiveIndex: 1.40978 },
    { brix: 50, refractiveIndex: 1.42009 },
    { brix: 55, refractiveIndex: 1.4308 },
    { brix: 60, refractiveIndex: 1.44193 },
    { brix: 65, refractiveIndex: 1.45348 },
    { brix: 70, refractiveIndex: 1.46546 },
    { brix: 75, refractiveIndex: 1.47787 },
    { brix: 80, refractiveIndex: 1.49071 },
    { brix: 85, refractiveIndex: 1.50398 },
    { brix: 90, refractiveIndex: 1.5177 },
    { brix: 95, refractiveIndex: 1.532 },
  ],
  tolerance: {
    text: '0.000006 to 85 Brix.',
    limits: [{ column: 'refractiveIndex', worst: 6e-6, rows: { column: 'brix', from: 0, to: 85 } }],
  },
  notes: ['Official to 85; 90 and 95 are extrapolated by the data library to four decimals.'],
  smooth: [{ x: 'brix', y: 'refractiveIndex' }],
  check: {
    rows: 20,
    sums: {
      brix: 950,
      refractiveIndex: 28.42805,
    },
  },
} as const satisfies EvidenceTable;
