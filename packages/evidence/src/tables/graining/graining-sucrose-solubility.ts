// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Solubility of sucrose in water. */
export const grainingSucroseSolubilityTable = {
  id: 'graining-sucrose-solubility',
  title: 'Solubility of sucrose in water',
  source: {
    authors: 'Mohos, F.A., after Antokolskaya and others and Herzfeld; Vavrinecz, G.; Charles, D.F.',
    year: '2010; 1962; 1960',
    title: 'Confectionery and Chocolate Engineering; Int. Sugar J. 62:126',
    locator: 'Appendix 2, Table A2.2',
  },
  grade: 'secondary',
  did: 'Table seen in a textbook; the coefficients of the first equation in several copies, those of the second recalled.',
  units: {
    temperatureC: '°C',
    solubilityGPer100GWater: 'g per 100 g water',
    solubilityPercent: 'g per 100 g solution',
    byVavrineczPercent: 'g per 100 g solution',
    byCharlesPercent: 'g per 100 g solution',
  },
  constants: {
    vavrinecz: '64.447 + 0.08222 t + 1.6169e-3 t² − 1.558e-6 t³ − 4.63e-8 t⁴',
    charles: '64.397 + 0.07251 t + 2.0569e-3 t² − 9.035e-6 t³',
  },
  rows: [
    { temperatureC: 0, solubilityGPer100GWater: 179.2, solubilityPercent: 64.18, byVavrineczPercent: 64.45, byCharlesPercent: 64.4 },
    { temperatureC: 5, solubilityGPer100GWater: 184.7, solubilityPercent: 64.88, byVavrineczPercent: 64.9, byCharlesPercent: 64.81 },
    { temperatureC: 10, solubilityGPer100GWater: 190.5, solubilityPercent: 65.58, byVavrineczPercent: 65.43, byCharlesPercent: 65.32 },
    { temperatureC: 15, solubilityGPer100GWater: 197, solubilityPercent: 66.33, byVavrineczPercent: 66.04, byCharlesPercent: 65.92 },
    { temperatureC: 20, solubilityGPer100GWater: 203.9, solubilityPercent: 67.09, byVavrineczPercent: 66.72, byCharlesPercent: 66.6 },
    { temperatureC: 25, solubilityGPer100GWater: 211.4, solubilityPercent: 67.89, byVavrineczPercent: 67.47, byCharlesPercent: 67.35 },
    { temperatureC: 30, solubilityGPer100GWater: 219.9, solubilityPercent: 68.74, byVavrineczPercent: 68.29, byCharlesPercent: 68.18 },
    { temperatureC: 35, solubilityGPer100GWater: 228.4, solubilityPercent: 69.55, byVavrineczPercent: 69.17, byCharlesPercent: 69.07 },
    { temperatureC: 40, solubilityGPer100GWater: 238.1, solubilityPercent: 70.42, byVavrineczPercent: 70.1, byCharlesPercent: 70.01 },
    { temperatureC: 45, solubilityGPer100GWater: 248.7, solubilityPercent: 71.32, byVavrineczPercent: 71.09, byCharlesPercent: 71 },
    { temperatureC: 50, solubilityGPer100GWater: 260.4, solubilityPercent: 72.25, byVavrineczPercent: 72.12, byCharlesPercent: 72.04 },
    { temperatureC: 55, solubilityGPer100GWater: 273.1, solubilityPercent: 73.2, byVavrineczPercent: 73.18, byCharlesPercent: 73.1 },
    { temperatureC: 60, solubilityGPer100GWater: 287.3, solubilityPercent: 74.18, byVavrineczPercent: 74.26, byCharlesPercent: 74.2 },
    { temperatureC: 65, solubilityGPer100GWater: 302.9, solubilityPercent: 75.18, byVavrineczPercent: 75.37, byCharlesPercent: 75.32 },
    { temperatureC: 70, solubilityGPer100GWater: 320.5, solubilityPercent: 76.22, byVavrineczPercent: 76.48, byCharlesPercent: 76.45 },
    { temperatureC: 75, solubilityGPer100GWater: 339.9, solubilityPercent: 77.27, byVavrineczPercent: 77.59, byCharlesPercent: 77.59 },
    { temperatureC: 80, solubilityGPer100GWater: 362.1, solubilityPercent: 78.36, byVavrineczPercent: 78.68, byCharlesPercent: 78.74 },
    { temperatureC: 85, solubilityGPer100GWater: 386.8, solubilityPercent: 79.46, byVavrineczPercent: 79.74, byCharlesPercent: 79.87 },
    { temperatureC: 90, solubilityGPer100GWater: 415.7, solubilityPercent: 80.61, byVavrineczPercent: 80.77, byCharlesPercent: 81 },
    { temperatureC: 95, solubilityGPer100GWater: 448.6, solubilityPercent: 81.77, byVavrineczPercent: 81.74, byCharlesPercent: 82.1 },
    { temperatureC: 100, solubilityGPer100GWater: 487.2, solubilityPercent: 82.97, byVavrineczPercent: 82.65, byCharlesPercent: 83.18 },
  ],
  tolerance: {
    text: '0.005 on the computed columns; 0.5 against the printed one.',
    limits: [
      { column: 'solubilityPercent', worst: 0.5 },
      { column: 'byVavrineczPercent', worst: 0.005 },
      { column: 'byCharlesPercent', worst: 0.005 },
    ],
  },
  notes: [
    'The two equations differ by −0.12 points at 15 to 30 °C, nothing near 74, and 0.53 at 100.',
    'The quadratic coefficient is 1.6169e-3 in seven copies; 1.66169e-3 would be worth at most 0.45 points, at 100 °C.',
    'Quote ± 0.3 points to 80 °C, ± 0.5 above; beyond 100 °C both are run on.',
  ],
  smooth: [
    { x: 'temperatureC', y: 'solubilityGPer100GWater' },
    { x: 'temperatureC', y: 'solubilityPercent' },
    { x: 'temperatureC', y: 'byVavrineczPercent' },
    { x: 'temperatureC', y: 'byCharlesPercent' },
  ],
  check: {
    rows: 21,
    sums: {
      temperatureC: 1050,
      solubilityGPer100GWater: 5986.3,
      solubilityPercent: 1527.45,
      byVavrineczPercent: 1526.24,
      byCharlesPercent: 1526.25,
    },
  },
} as const satisfies EvidenceTable;
