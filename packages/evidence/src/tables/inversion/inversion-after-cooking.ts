// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** 1 % citric acid stirred into a cooked mass, water counted. */
export const inversionAfterCookingTable = {
  id: 'inversion-after-cooking',
  title: '1 % citric acid stirred into a cooked mass, water counted',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with the inversion law, sucrose and water integrated together',
    locator: '1000 g mass: 975 g sucrose, 25 g water, 10 g acid',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    temperatureC: '°C, held',
    minutes: 'min',
    invertedLowPercent: '% of sucrose',
    invertedDampedPercent: '% of sucrose',
    invertedUpperPercent: '% of sucrose',
  },
  constants: { limitPercent: 48.7 },
  rows: [
    { temperatureC: 145, minutes: 2, invertedLowPercent: 17.7, invertedDampedPercent: 35.5, invertedUpperPercent: 48.7 },
    { temperatureC: 145, minutes: 5, invertedLowPercent: 32.3, invertedDampedPercent: 48.3, invertedUpperPercent: 48.7 },
    { temperatureC: 130, minutes: 2, invertedLowPercent: 6.7, invertedDampedPercent: 16.9, invertedUpperPercent: 48.7 },
    { temperatureC: 130, minutes: 5, invertedLowPercent: 14.7, invertedDampedPercent: 31.2, invertedUpperPercent: 48.7 },
    { temperatureC: 120, minutes: 2, invertedLowPercent: 3.1, invertedDampedPercent: 8.6, invertedUpperPercent: 43.5 },
    { temperatureC: 120, minutes: 5, invertedLowPercent: 7.3, invertedDampedPercent: 18.1, invertedUpperPercent: 48.7 },
    { temperatureC: 115, minutes: 2, invertedLowPercent: 2.1, invertedDampedPercent: 5.8, invertedUpperPercent: 35.4 },
    { temperatureC: 115, minutes: 5, invertedLowPercent: 4.9, invertedDampedPercent: 13, invertedUpperPercent: 48.7 },
    { temperatureC: 105, minutes: 2, invertedLowPercent: 0.9, invertedDampedPercent: 2.5, invertedUpperPercent: 19.2 },
    { temperatureC: 105, minutes: 5, invertedLowPercent: 2.1, invertedDampedPercent: 6, invertedUpperPercent: 35.9 },
    { temperatureC: 95, minutes: 2, invertedLowPercent: 0.3, invertedDampedPercent: 1, invertedUpperPercent: 8.6 },
    { temperatureC: 95, minutes: 5, invertedLowPercent: 0.8, invertedDampedPercent: 2.5, invertedUpperPercent: 18.9 },
  ],
  tolerance: {
    text: '1 point.',
    limits: [
      { column: 'invertedLowPercent', worst: 1 },
      { column: 'invertedDampedPercent', worst: 1 },
      { column: 'invertedUpperPercent', worst: 1 },
    ],
  },
  notes: [
    'Each step takes the acid in the water that is left; at no water it stops.',
    'Water runs out at 48.7 % inverted; with 2.0 % of water at 38.8 %.',
    'The acid is taken as dissolved at once, which grains of acid are not.',
    'No verdict rests on the damped column alone.',
  ],
  check: {
    rows: 12,
    sums: {
      temperatureC: 1420,
      minutes: 42,
      invertedLowPercent: 92.9,
      invertedDampedPercent: 189.4,
      invertedUpperPercent: 453.7,
    },
  },
} as const satisfies EvidenceTable;
