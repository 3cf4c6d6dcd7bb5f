import type { EvidenceTable } from '../../types.js';

/** pH of acids in water by charge balance. */
export const inversionPhRowsTable = {
  id: 'inversion-ph-rows',
  title: 'pH of acids in water by charge balance',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with the acid constants at 25 °C',
    locator: 'activity coefficients 1',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    acidMolPerKg: 'mol per kg water',
    cationMolPerKg: 'mol per kg water',
    ph: 'dimensionless',
  },
  rows: [
    { acid: 'citric', acidMolPerKg: 0.001, cationMolPerKg: 0, ph: 3.234 },
    { acid: 'citric', acidMolPerKg: 0.01, cationMolPerKg: 0, ph: 2.62 },
    { acid: 'citric', acidMolPerKg: 0.1, cationMolPerKg: 0, ph: 2.082 },
    { acid: 'citric', acidMolPerKg: 0.1, cationMolPerKg: 0.05, ph: 3.113 },
    { acid: 'tartaric', acidMolPerKg: 0.001, cationMolPerKg: 0, ph: 3.176 },
    { acid: 'tartaric', acidMolPerKg: 0.01, cationMolPerKg: 0, ph: 2.553 },
    { acid: 'malic', acidMolPerKg: 0.01, cationMolPerKg: 0, ph: 2.742 },
    { acid: 'malic', acidMolPerKg: 0.1, cationMolPerKg: 0, ph: 2.213 },
    { acid: 'lactic', acidMolPerKg: 0.01, cationMolPerKg: 0, ph: 2.955 },
    { acid: 'lactic', acidMolPerKg: 0.1, cationMolPerKg: 0, ph: 2.438 },
    { acid: 'tartaric', acidMolPerKg: 0.005, cationMolPerKg: 0.005, ph: 3.717 },
    { acid: 'tartaric', acidMolPerKg: 0.0124, cationMolPerKg: 0.0124, ph: 3.685 },
    { acid: 'tartaric', acidMolPerKg: 0.03, cationMolPerKg: 0.03, ph: 3.67 },
  ],
  tolerance: { text: '0.001.', limits: [{ column: 'ph', worst: 0.001 }] },
  notes: [
    'Tartaric acid with as much cation is cream of tartar: about 3.7 whatever the dose; a saturated solution is usually quoted as 3.56.',
  ],
  check: {
    rows: 13,
    sums: {
      acidMolPerKg: 0.4894,
      cationMolPerKg: 0.0974,
      ph: 38.198,
    },
  },
} as const satisfies EvidenceTable;
