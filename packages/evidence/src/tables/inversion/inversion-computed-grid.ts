// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** The inversion law on a grid, 65 % sucrose. */
export const inversionComputedGridTable = {
  id: 'inversion-computed-grid',
  title: 'The inversion law on a grid, 65 % sucrose',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with the law of Vukov and the density of sucrose solutions',
    locator: 'density at no more than 100 °C',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    temperatureC: '°C',
    ph: 'dimensionless',
    sucroseMassFraction: '0 to 1',
    waterGPerMl: 'g/ml',
    ratePerMin: '1/min',
    invertedPercentPerHour: '%',
  },
  rows: [
    { temperatureC: 60, ph: 3, sucroseMassFraction: 0.65, waterGPerMl: 0.453, ratePerMin: 0.0003521, invertedPercentPerHour: 2.091 },
    { temperatureC: 60, ph: 4, sucroseMassFraction: 0.65, waterGPerMl: 0.453, ratePerMin: 3.521e-5, invertedPercentPerHour: 0.2111 },
    { temperatureC: 60, ph: 5, sucroseMassFraction: 0.65, waterGPerMl: 0.453, ratePerMin: 3.521e-6, invertedPercentPerHour: 0.02113 },
    { temperatureC: 60, ph: 6, sucroseMassFraction: 0.65, waterGPerMl: 0.453, ratePerMin: 3.521e-7, invertedPercentPerHour: 0.002113 },
    { temperatureC: 80, ph: 3, sucroseMassFraction: 0.65, waterGPerMl: 0.4485, ratePerMin: 0.003208, invertedPercentPerHour: 17.51 },
    { temperatureC: 80, ph: 4, sucroseMassFraction: 0.65, waterGPerMl: 0.4485, ratePerMin: 0.0003208, invertedPercentPerHour: 1.907 },
    { temperatureC: 80, ph: 5, sucroseMassFraction: 0.65, waterGPerMl: 0.4485, ratePerMin: 3.208e-5, invertedPercentPerHour: 0.1923 },
    { temperatureC: 80, ph: 6, sucroseMassFraction: 0.65, waterGPerMl: 0.4485, ratePerMin: 3.208e-6, invertedPercentPerHour: 0.01925 },
    { temperatureC: 100, ph: 3, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.02303, invertedPercentPerHour: 74.89 },
    { temperatureC: 100, ph: 4, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.002303, invertedPercentPerHour: 12.91 },
    { temperatureC: 100, ph: 5, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.0002303, invertedPercentPerHour: 1.372 },
    { temperatureC: 100, ph: 6, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 2.303e-5, invertedPercentPerHour: 0.1381 },
    { temperatureC: 110, ph: 3, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.0574, invertedPercentPerHour: 96.81 },
    { temperatureC: 110, ph: 4, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.00574, invertedPercentPerHour: 29.13 },
    { temperatureC: 110, ph: 5, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.000574, invertedPercentPerHour: 3.385 },
    { temperatureC: 110, ph: 6, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 5.74e-5, invertedPercentPerHour: 0.3438 },
    { temperatureC: 120, ph: 3, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.1366, invertedPercentPerHour: 99.97 },
    { temperatureC: 120, ph: 4, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.01366, invertedPercentPerHour: 55.93 },
    { temperatureC: 120, ph: 5, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.001366, invertedPercentPerHour: 7.866 },
    { temperatureC: 120, ph: 6, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.0001366, invertedPercentPerHour: 0.816 },
    { temperatureC: 130, ph: 3, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.3112, invertedPercentPerHour: 100 },
    { temperatureC: 130, ph: 4, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.03112, invertedPercentPerHour: 84.54 },
    { temperatureC: 130, ph: 5, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.003112, invertedPercentPerHour: 17.03 },
    { temperatureC: 130, ph: 6, sucroseMassFraction: 0.65, waterGPerMl: 0.4439, ratePerMin: 0.0003112, invertedPercentPerHour: 1.85 },
  ],
  tolerance: {
    text: 'A thousandth of each value.',
    limits: [
      { column: 'ratePerMin', worst: 0.001, relative: true },
      { column: 'invertedPercentPerHour', worst: 0.001, relative: true },
    ],
  },
  check: {
    rows: 24,
    sums: {
      temperatureC: 2400,
      ph: 108,
      sucroseMassFraction: 15.6,
      waterGPerMl: 10.7084,
      ratePerMin: 0.5908188011,
      invertedPercentPerHour: 608.934793,
    },
  },
} as const satisfies EvidenceTable;
