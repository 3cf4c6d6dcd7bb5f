// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Coefficients of the density of sucrose solutions. */
export const densityIcumsaCoefficientsTable = {
  id: 'density-icumsa-coefficients',
  title: 'Coefficients of the density of sucrose solutions',
  source: {
    authors: 'ICUMSA; Bubnik, Z., Kadlec, P., Urban, D., Bruhns, M.',
    year: '1994; 1995',
    title: 'ICUMSA SPS-4; Sugar Technologists Manual, 8th ed.',
    locator: 'density polynomial',
  },
  grade: 'secondary',
  did: 'Seen in two copies of public model code.',
  units: {
    powerOfTau: 'count',
    w1: 'kg/m³',
    w2: 'kg/m³',
    w3: 'kg/m³',
    w4: 'kg/m³',
    w5: 'kg/m³',
    w6: 'kg/m³',
  },
  constants: {
    equation: 'ρ = ρ water(T) + Σ τ^k Σ coefficient · w^i, τ = (T − 20)/100, w mass fraction',
  },
  rows: [
    { powerOfTau: 0, w1: 385.1761, w2: 135.3705, w3: 40.9299, w4: -3.9643, w5: 13.4853, w6: -17.289 },
    { powerOfTau: 1, w1: -46.272, w2: -7.172, w3: 1.1597, w4: 5.1126, w5: 17.5254, w6: null },
    { powerOfTau: 2, w1: 59.7712, w2: 7.2491, w3: 12.363, w4: -35.4791, w5: null, w6: null },
    { powerOfTau: 3, w1: -47.2207, w2: -21.6977, w3: 27.6301, w4: null, w5: null, w6: null },
    { powerOfTau: 4, w1: 18.3184, w2: 12.3081, w3: null, w4: null, w5: null, w6: null },
  ],
  notes: [
    'One public copy prints −3.9646 for the fourth coefficient; it makes no visible difference.',
    '0 to 85 % and 0 to 80 °C; to 100 °C with care.',
  ],
  check: {
    rows: 5,
    sums: {
      powerOfTau: 10,
      w1: 369.773,
      w2: 126.058,
      w3: 82.0827,
      w4: -34.3308,
      w5: 31.0107,
      w6: -17.289,
    },
  },
} as const satisfies EvidenceTable;
