import type { EvidenceTable } from '../../types.js';

/** Boiling-point elevation by a sugar-factory equation, water at 100 °C. */
export const boilingSucroseFactoryEquationTable = {
  id: 'boiling-sucrose-factory-equation',
  title: 'Boiling-point elevation by a sugar-factory equation, water at 100 °C',
  source: {
    authors: 'Peacock, S.',
    year: '1995',
    title: 'Predicting physical properties of factory juices and syrups, Int. Sugar J. 97:571',
    locator: 'elevation equation',
  },
  grade: 'memory',
  did: 'Equation recalled, attribution not verified; rows computed from it.',
  units: { drySolidsPercent: '% m/m', boilingPointElevationK: 'K' },
  constants: {
    equation:
      'ΔT = 6.064e-5 · ((273 + t)² W²)/(374.3 − t)^0.38 · (5.84e-7 (W − 40)² + 7.2e-4); t water °C, W % solids',
  },
  rows: [
    { drySolidsPercent: 10, boilingPointElevationK: 0.12 },
    { drySolidsPercent: 20, boilingPointElevationK: 0.38 },
    { drySolidsPercent: 30, boilingPointElevationK: 0.7 },
    { drySolidsPercent: 40, boilingPointElevationK: 1.15 },
    { drySolidsPercent: 50, boilingPointElevationK: 1.94 },
    { drySolidsPercent: 55, boilingPointElevationK: 2.57 },
    { drySolidsPercent: 60, boilingPointElevationK: 3.43 },
    { drySolidsPercent: 65, boilingPointElevationK: 4.58 },
    { drySolidsPercent: 70, boilingPointElevationK: 6.1 },
    { drySolidsPercent: 75, boilingPointElevationK: 8.07 },
    { drySolidsPercent: 80, boilingPointElevationK: 10.58 },
    { drySolidsPercent: 85, boilingPointElevationK: 13.74 },
    { drySolidsPercent: 90, boilingPointElevationK: 17.64 },
  ],
  tolerance: { text: 'Shown, not gated; not meant above 85 %.' },
  notes: [
    'Tuned on impure factory liquors: about 1 °C above pure-sucrose tables at 65 to 80 %, 3 to 5 °C below candy tables at 90 %.',
  ],
  smooth: [{ x: 'drySolidsPercent', y: 'boilingPointElevationK' }],
  check: {
    rows: 13,
    sums: {
      drySolidsPercent: 730,
      boilingPointElevationK: 71,
    },
  },
} as const satisfies EvidenceTable;
