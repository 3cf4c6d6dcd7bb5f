// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Water activity of sucrose solutions at 25 °C. */
export const boilingSucroseAw25CTable = {
  id: 'boiling-sucrose-aw-25C',
  title: 'Water activity of sucrose solutions at 25 °C',
  source: {
    authors: 'Robinson, R.A.; Stokes, R.H.',
    year: '1961',
    title: 'Isopiestic reference for sucrose, J. Phys. Chem. 65:1954',
    locator: 'polynomial in molality',
  },
  grade: 'memory',
  did: 'Recalled and not found again.',
  units: {
    molalityMolPerKg: 'mol/kg water',
    drySolidsPercent: '% m/m',
    osmoticCoefficient: 'dimensionless',
    waterActivity: '0 to 1',
  },
  constants: {
    equation: 'φ = 1 + 0.07028 m + 0.01847 m² − 0.004045 m³ + 0.000228 m⁴',
    maxMolalityMolPerKg: 6,
  },
  rows: [
    { molalityMolPerKg: 0.1, drySolidsPercent: 3.31, osmoticCoefficient: 1.0072, waterActivity: 0.99819 },
    { molalityMolPerKg: 0.2, drySolidsPercent: 6.407, osmoticCoefficient: 1.0148, waterActivity: 0.99635 },
    { molalityMolPerKg: 0.5, drySolidsPercent: 14.614, osmoticCoefficient: 1.0393, waterActivity: 0.99068 },
    { molalityMolPerKg: 1, drySolidsPercent: 25.501, osmoticCoefficient: 1.0849, waterActivity: 0.98064 },
    { molalityMolPerKg: 1.5, drySolidsPercent: 33.926, osmoticCoefficient: 1.1345, waterActivity: 0.96981 },
    { molalityMolPerKg: 2, drySolidsPercent: 40.638, osmoticCoefficient: 1.1857, waterActivity: 0.95818 },
    { molalityMolPerKg: 2.5, drySolidsPercent: 46.113, osmoticCoefficient: 1.2368, waterActivity: 0.94582 },
    { molalityMolPerKg: 3, drySolidsPercent: 50.663, osmoticCoefficient: 1.2863, waterActivity: 0.93284 },
    { molalityMolPerKg: 3.5, drySolidsPercent: 54.505, osmoticCoefficient: 1.333, waterActivity: 0.91938 },
    { molalityMolPerKg: 4, drySolidsPercent: 57.791, osmoticCoefficient: 1.3761, waterActivity: 0.90559 },
    { molalityMolPerKg: 4.5, drySolidsPercent: 60.635, osmoticCoefficient: 1.4152, waterActivity: 0.89161 },
    { molalityMolPerKg: 5, drySolidsPercent: 63.12, osmoticCoefficient: 1.45, waterActivity: 0.87756 },
    { molalityMolPerKg: 5.5, drySolidsPercent: 65.309, osmoticCoefficient: 1.4809, waterActivity: 0.86352 },
    { molalityMolPerKg: 6, drySolidsPercent: 67.254, osmoticCoefficient: 1.5084, waterActivity: 0.84956 },
  ],
  tolerance: {
    text: '0.002 of water activity.',
    limits: [
      { column: 'waterActivity', worst: 0.002 },
    ],
  },
  notes: [
    'The polynomial is recalled; the rows are computed from it.',
  ],
  smooth: [
    { x: 'molalityMolPerKg', y: 'osmoticCoefficient' },
    { x: 'molalityMolPerKg', y: 'waterActivity' },
  ],
  check: {
    rows: 14,
    sums: {
      molalityMolPerKg: 39.3,
      drySolidsPercent: 589.786,
      osmoticCoefficient: 17.5531,
      waterActivity: 13.07973,
    },
  },
} as const satisfies EvidenceTable;
