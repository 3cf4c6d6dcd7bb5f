import type { EvidenceTable } from '../../types.js';

/** Heat to turn water to steam. */
export const heatLatentTable = {
  id: 'heat-latent',
  title: 'Heat to turn water to steam',
  source: {
    authors: 'Ohio University; IAPWS',
    year: '1992',
    title: 'Saturated water, temperature table; IAPWS SR1-86(1992)',
    locator: '120 to 150 °C by Clapeyron',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  address:
    'https://people.ohio.edu/trembly/mechanical/thermo/property_tables/H2O/H2O_TempSat1.html',
  units: { temperatureC: '°C', latentHeatKJPerKg: 'kJ/kg' },
  rows: [
    { temperatureC: 0.01, latentHeatKJPerKg: 2500.9, grade: 'secondary' },
    { temperatureC: 20, latentHeatKJPerKg: 2453.5, grade: 'primary' },
    { temperatureC: 100, latentHeatKJPerKg: 2256, grade: 'secondary' },
    { temperatureC: 120, latentHeatKJPerKg: 2202, grade: 'derived' },
    { temperatureC: 140, latentHeatKJPerKg: 2144, grade: 'derived' },
    { temperatureC: 150, latentHeatKJPerKg: 2114, grade: 'derived' },
  ],
  tolerance: {
    text: '1 kJ/kg.',
    limits: [{ column: 'latentHeatKJPerKg', worst: 1 }],
  },
  notes: [
    'Out of a hot syrup the vapour is superheated: 2257 − 2.2 (T − 100) kJ/kg, T that of the syrup; within 2 % of saturation to 150 °C.',
    'The heat of dilution of sugar is below 2 % of it.',
  ],
  check: {
    rows: 6,
    sums: {
      temperatureC: 530.01,
      latentHeatKJPerKg: 13670.4,
    },
  },
} as const satisfies EvidenceTable;
