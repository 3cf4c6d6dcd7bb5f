import type { EvidenceTable } from '../../types.js';

/** Density of water. */
export const densityWaterTable = {
  id: 'density-water',
  title: 'Density of water',
  source: {
    authors: 'Kell, G.S.',
    year: '1975',
    title: 'J. Chem. Eng. Data 20:97',
    locator: 'rational polynomial',
  },
  grade: 'derived',
  did: 'Coefficients seen in public code; rows computed from them.',
  units: { temperatureC: '°C', densityKgPerM3: 'kg/m³' },
  constants: {
    numerator: [999.83952, 16.952577, -0.0079905127, -4.6241757e-5, 1.0584601e-7, -2.8103006e-10],
    denominator: [1, 0.016887236],
  },
  rows: [
    { temperatureC: 4, densityKgPerM3: 999.972 },
    { temperatureC: 20, densityKgPerM3: 998.203 },
    { temperatureC: 25, densityKgPerM3: 997.043 },
    { temperatureC: 50, densityKgPerM3: 988.03 },
    { temperatureC: 100, densityKgPerM3: 958.345 },
  ],
  tolerance: {
    text: '0.01 kg/m³.',
    limits: [{ column: 'densityKgPerM3', worst: 0.01 }],
  },
  notes: [
    'The rows equal the accepted 999.972, 998.203, 997.04, 988.03 and 958.35.',
    'The coefficients of the older temperature scale differ by under 0.01 kg/m³.',
  ],
  check: {
    rows: 5,
    sums: {
      temperatureC: 199,
      densityKgPerM3: 4941.593,
    },
  },
} as const satisfies EvidenceTable;
