// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Water at which the glass transition meets 25 °C. */
export const glassCriticalWaterTable = {
  id: 'glass-critical-water',
  title: 'Water at which the glass transition meets 25 °C',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with the Gordon-Taylor equation and the isotherms',
    locator: '100 (Tg − 25)/(160 k)',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    dryGlassTransitionC: '°C',
    k: 'dimensionless',
    waterGPer100GSolids: 'g per 100 g solids',
    waterPercent: '% m/m of the whole',
    waterActivity: '0 to 1',
  },
  rows: [
    { material: 'sucrose', dryGlassTransitionC: 62, k: 5.43, waterGPer100GSolids: 4.26, waterPercent: 4.09, waterActivity: 0.243 },
    { material: 'glucose', dryGlassTransitionC: 31, k: 4.52, waterGPer100GSolids: 0.83, waterPercent: 0.82, waterActivity: null },
    { material: 'maltose', dryGlassTransitionC: 87, k: 6.16, waterGPer100GSolids: 6.29, waterPercent: 5.92, waterActivity: null },
    { material: 'lactose', dryGlassTransitionC: 101, k: 6.57, waterGPer100GSolids: 7.23, waterPercent: 6.74, waterActivity: 0.37, note: 'Water activity as published by Roos 2002, who prints 6.8 g of water.' },
    { material: 'trehalose', dryGlassTransitionC: 100, k: 6.54, waterGPer100GSolids: 7.17, waterPercent: 6.69, waterActivity: null },
    { material: 'isomalt', dryGlassTransitionC: 62, k: 5.43, waterGPer100GSolids: 4.26, waterPercent: 4.09, waterActivity: 0.243, note: 'The sucrose isotherm stands in.' },
    { material: 'maltitol', dryGlassTransitionC: 39, k: 4.75, waterGPer100GSolids: 1.84, waterPercent: 1.81, waterActivity: null },
    { material: 'lactitol', dryGlassTransitionC: 52, k: 5.13, waterGPer100GSolids: 3.29, waterPercent: 3.18, waterActivity: null },
    { material: 'glucose syrup solids DE 42', dryGlassTransitionC: 93.3, k: 6, waterGPer100GSolids: 7.12, waterPercent: 6.65, waterActivity: 0.39, note: 'Isotherm of glucose-syrup solids run on below its data at 0.6.' },
    { material: 'maltodextrin DE 36', dryGlassTransitionC: 102.7, k: 6, waterGPer100GSolids: 8.09, waterPercent: 7.48, waterActivity: 0.428, note: 'Isotherm of glucose-syrup solids run on below its data at 0.6.' },
    { material: 'maltodextrin DE 20', dryGlassTransitionC: 134, k: 6, waterGPer100GSolids: 11.36, waterPercent: 10.2, waterActivity: 0.534, note: 'Isotherm of glucose-syrup solids run on below its data at 0.6.' },
    { material: 'maltodextrin DE 10', dryGlassTransitionC: 163.7, k: 6, waterGPer100GSolids: 14.45, waterPercent: 12.63, waterActivity: 0.609, note: 'Isotherm of glucose-syrup solids run on below its data at 0.6.' },
    { material: 'maltodextrin DE 5', dryGlassTransitionC: 187.1, k: 6, waterGPer100GSolids: 16.89, waterPercent: 14.45, waterActivity: 0.654, note: 'Isotherm of glucose-syrup solids run on below its data at 0.6.' },
    { material: 'hard candy 60:40 sucrose:DE 42', dryGlassTransitionC: 73.9, k: 5.66, waterGPer100GSolids: 5.4, waterPercent: 5.12, waterActivity: 0.299 },
    { material: 'the same, sticking starts (transition at 15 °C)', dryGlassTransitionC: null, k: null, waterGPer100GSolids: 6.94, waterPercent: 6.49, waterActivity: 0.36 },
    { material: 'the same, fully sticky (transition at 5 °C)', dryGlassTransitionC: null, k: null, waterGPer100GSolids: 8.7, waterPercent: 8, waterActivity: 0.421 },
  ],
  tolerance: {
    text: '0.02 g on sugars and polyols, 0.05 g on syrup solids and mixtures.',
    limits: [
      { column: 'waterGPer100GSolids', worst: 0.02, rows: { column: 'material', is: ['sucrose', 'glucose', 'maltose', 'lactose', 'trehalose', 'isomalt', 'maltitol', 'lactitol'] } },
      { column: 'waterGPer100GSolids', worst: 0.05 },
    ],
  },
  notes: [
    'An error of 1 g per 100 g is one of about 9 K in the transition.',
  ],
  check: {
    rows: 16,
    sums: {
      dryGlassTransitionC: 1288.7,
      k: 80.19,
      waterGPer100GSolids: 114.12,
      waterPercent: 104.36,
      waterActivity: 4.551,
    },
  },
} as const satisfies EvidenceTable;
