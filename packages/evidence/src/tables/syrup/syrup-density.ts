import type { EvidenceTable } from '../../types.js';

/** Density of glucose syrup beside a sucrose solution of equal solids. */
export const syrupDensityTable = {
  id: 'syrup-density',
  title: 'Density of glucose syrup beside a sucrose solution of equal solids',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Own fit to the commercial Baumé table',
    locator: 'ratio at equal solids and temperature',
  },
  grade: 'memory',
  did: 'Recalled and not found again.',
  units: {
    dextroseEquivalent: '0 to 100',
    drySolidsPercent: '% m/m',
    temperatureC: '°C',
    ratioToSucrose: 'dimensionless',
  },
  constants: {
    equation: 'ρ = ρ sucrose · (1 + (0.010 + 0.0004 (42 − DE)) · s/0.80), DE 20 to 70',
  },
  rows: [
    { dextroseEquivalent: 36, drySolidsPercent: 79.9, temperatureC: 60, ratioToSucrose: 1.0129 },
    { dextroseEquivalent: 42, drySolidsPercent: 80.3, temperatureC: 60, ratioToSucrose: 1.0109 },
    { dextroseEquivalent: 52, drySolidsPercent: 81.4, temperatureC: 60, ratioToSucrose: 1.0056 },
    { dextroseEquivalent: 63, drySolidsPercent: 82, temperatureC: 60, ratioToSucrose: 1.0027 },
  ],
  tolerance: {
    text: '0.5 %.',
    limits: [{ column: 'ratioToSucrose', worst: 0.005 }],
  },
  notes: [
    'Good to ± 0.5 %.',
    'The figure at 100 °F would give a ratio of 1.0077 instead of 1.0109 at 42 DE.',
    'Seen for 42 DE: specific gravity about 1.415 at 100 °F.',
  ],
  check: {
    rows: 4,
    sums: {
      dextroseEquivalent: 193,
      drySolidsPercent: 323.6,
      temperatureC: 240,
      ratioToSucrose: 4.0321,
    },
  },
} as const satisfies EvidenceTable;
