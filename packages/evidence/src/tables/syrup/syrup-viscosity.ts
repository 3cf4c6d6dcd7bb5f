import type { EvidenceTable } from '../../types.js';

/** Viscosity of glucose syrup, 42 DE at 80 % solids. */
export const syrupViscosityTable = {
  id: 'syrup-viscosity',
  title: 'Viscosity of glucose syrup, 42 DE at 80 % solids',
  source: {
    authors: 'trade tables of the corn refining industry',
    year: '1966 to 1980',
    title: 'Viscosity charts',
    locator: '43 °Bé',
  },
  grade: 'memory',
  did: 'Recalled and not found again.',
  units: { temperatureC: '°C', viscosityPaS: 'Pa s' },
  rows: [
    { temperatureC: 26.7, viscosityPaS: 56 },
    { temperatureC: 37.8, viscosityPaS: 15 },
    { temperatureC: 48.9, viscosityPaS: 5 },
    { temperatureC: 60, viscosityPaS: 2 },
  ],
  notes: ['Order of magnitude, ± 30 %; nothing is gated on it.'],
  check: {
    rows: 4,
    sums: {
      temperatureC: 173.4,
      viscosityPaS: 78,
    },
  },
} as const satisfies EvidenceTable;
