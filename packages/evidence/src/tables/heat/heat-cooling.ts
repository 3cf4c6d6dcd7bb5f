// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Heat transfer from cooling pieces. */
export const heatCoolingTable = {
  id: 'heat-cooling',
  title: 'Heat transfer from cooling pieces',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'Common practice of the trade',
    locator: 'none',
  },
  grade: 'practice',
  did: 'Common practice of the trade; no publication stands behind it.',
  units: {
    coefficientWPerM2K: 'W/(m² K)',
    lowWPerM2K: 'W/(m² K)',
    highWPerM2K: 'W/(m² K)',
  },
  constants: {
    thermalConductivityWPerMK: { value: 0.3, low: 0.25, high: 0.35 },
    example: { massG: 10, areaCm2: 23, specificHeatKJPerKgK: 2, coefficientWPerM2K: 10, airC: 22, fromC: 130, toC: 40, timeConstantS: 870, minutes: 26 },
  },
  rows: [
    { surface: 'still air, convection plus radiation', coefficientWPerM2K: 10, lowWPerM2K: 8, highWPerM2K: 12 },
    { surface: 'fan', coefficientWPerM2K: 25, lowWPerM2K: 20, highWPerM2K: 40 },
    { surface: 'metal or stone slab, one face', coefficientWPerM2K: 100, lowWPerM2K: 50, highWPerM2K: 200 },
  ],
  tolerance: { text: '0.1 min on the example.' },
  notes: [
    'T = Ta + (T0 − Ta) exp(−t/τ), τ = m c/(h A).',
    'Not for slabs thicker than about 10 mm on stone: the middle lags.',
  ],
  check: {
    rows: 3,
    sums: {
      coefficientWPerM2K: 135,
      lowWPerM2K: 78,
      highWPerM2K: 252,
    },
  },
} as const satisfies EvidenceTable;
