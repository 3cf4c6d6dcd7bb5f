// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Specific heat of sugar solutions. */
export const heatCpTable = {
  id: 'heat-cp',
  title: 'Specific heat of sugar solutions',
  source: {
    authors: 'Bubnik, Z., and others; Llano-Restrepo',
    year: '1995; 2005',
    title: 'Sugar Technologists Manual, 8th ed.',
    locator: 'specific heat formula',
  },
  grade: 'derived',
  did: 'The law was seen in model code; rows computed from it.',
  units: {
    brix: 'g per 100 g',
    purityPercent: '%',
    temperatureC: '°C',
    specificHeatKJPerKgK: 'kJ/(kg K)',
    bySolutionLawKJPerKgK: 'kJ/(kg K)',
  },
  constants: {
    law: 'c = 4.1868 − 0.0297 B + 4.6e-5 B P + 7.5e-5 B T',
    blend: 'above 85 %: (1 − x) law + 2.0 x, x = (w − 0.85)/0.13; 2.0 from 98 %',
    crystallineSucrose: { law: 'c = 1.1355 + 0.004312 T', at50C: 1.351, grade: 'secondary' },
    sugarGlass: { value: 1.4, either: 0.15, grade: 'memory' },
    dryMelt: { value: 2, either: 0.3, grade: 'derived' },
  },
  rows: [
    { brix: 0, purityPercent: 100, temperatureC: 20, specificHeatKJPerKgK: 4.1868, bySolutionLawKJPerKgK: 4.1868 },
    { brix: 20, purityPercent: 100, temperatureC: 20, specificHeatKJPerKgK: 3.7148, bySolutionLawKJPerKgK: 3.7148 },
    { brix: 40, purityPercent: 100, temperatureC: 20, specificHeatKJPerKgK: 3.2428, bySolutionLawKJPerKgK: 3.2428 },
    { brix: 50, purityPercent: 100, temperatureC: 20, specificHeatKJPerKgK: 3.0068, bySolutionLawKJPerKgK: 3.0068 },
    { brix: 50, purityPercent: 100, temperatureC: 60, specificHeatKJPerKgK: 3.1568, bySolutionLawKJPerKgK: 3.1568 },
    { brix: 60, purityPercent: 100, temperatureC: 20, specificHeatKJPerKgK: 2.7708, bySolutionLawKJPerKgK: 2.7708 },
    { brix: 65, purityPercent: 100, temperatureC: 25, specificHeatKJPerKgK: 2.6772, bySolutionLawKJPerKgK: 2.6772 },
    { brix: 80, purityPercent: 100, temperatureC: 80, specificHeatKJPerKgK: 2.6588, bySolutionLawKJPerKgK: 2.6588 },
    { brix: 90, purityPercent: 100, temperatureC: 120, specificHeatKJPerKgK: 2.454, bySolutionLawKJPerKgK: 2.7378 },
    { brix: 97.5, purityPercent: 100, temperatureC: 150, specificHeatKJPerKgK: 2.0322, bySolutionLawKJPerKgK: 2.8364 },
  ],
  tolerance: {
    text: '0.001 of the law; ± 10 % to 90 Brix, ± 15 % above.',
    limits: [
      { column: 'specificHeatKJPerKgK', worst: 0.001 },
    ],
  },
  notes: [
    'Above 85 Brix the law is not run on: it would give 2.84 at 97.5 % and 150 °C.',
    'Glucose syrup: the same law with purity 0 to 40.',
  ],
  check: {
    rows: 10,
    sums: {
      brix: 552.5,
      purityPercent: 1000,
      temperatureC: 535,
      specificHeatKJPerKgK: 29.901,
      bySolutionLawKJPerKgK: 30.989,
    },
  },
} as const satisfies EvidenceTable;
