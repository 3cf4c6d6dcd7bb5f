// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Boiling under vacuum, and the driest a vacuum draw can reach. */
export const boilingVacuumTable = {
  id: 'boiling-vacuum',
  title: 'Boiling under vacuum, and the driest a vacuum draw can reach',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with the boiling model',
    locator: 'sucrose (rows); 60:40 sucrose and 42 DE syrup (flash)',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    vacuumMmHg: 'mmHg below 760',
    pressurePa: 'Pa absolute',
    boilingPointAt950PerMilleC: '°C',
    boilingPointAt970PerMilleC: '°C',
    boilingPointAt980PerMilleC: '°C',
    boilingPointAt985PerMilleC: '°C',
    boilingPointAt990PerMilleC: '°C',
  },
  rows: [
    { vacuumMmHg: 600, pressurePa: 21332, boilingPointAt950PerMilleC: 94.1, boilingPointAt970PerMilleC: 102.9, boilingPointAt980PerMilleC: 107.7, boilingPointAt985PerMilleC: 110.2, boilingPointAt990PerMilleC: 113.5 },
    { vacuumMmHg: 650, pressurePa: 14665, boilingPointAt950PerMilleC: 84.9, boilingPointAt970PerMilleC: 93.5, boilingPointAt980PerMilleC: 98.3, boilingPointAt985PerMilleC: 100.8, boilingPointAt990PerMilleC: 104.1 },
    { vacuumMmHg: 700, pressurePa: 7999, boilingPointAt950PerMilleC: 71, boilingPointAt970PerMilleC: 79.3, boilingPointAt980PerMilleC: 84.1, boilingPointAt985PerMilleC: 86.7, boilingPointAt990PerMilleC: 90 },
    { vacuumMmHg: 720, pressurePa: 5333, boilingPointAt950PerMilleC: 62.4, boilingPointAt970PerMilleC: 70.5, boilingPointAt980PerMilleC: 75.3, boilingPointAt985PerMilleC: 77.9, boilingPointAt990PerMilleC: 81.2 },
    { vacuumMmHg: 735, pressurePa: 3333, boilingPointAt950PerMilleC: 53, boilingPointAt970PerMilleC: 60.9, boilingPointAt980PerMilleC: 65.6, boilingPointAt985PerMilleC: 68.3, boilingPointAt990PerMilleC: 71.6 },
  ],
  tolerance: {
    text: '0.1 °C on the rows; 0.05 % and 0.2 °C on the flash.',
    limits: [
      { column: 'boilingPointAt950PerMilleC', worst: 0.1 },
      { column: 'boilingPointAt970PerMilleC', worst: 0.1 },
      { column: 'boilingPointAt980PerMilleC', worst: 0.1 },
      { column: 'boilingPointAt985PerMilleC', worst: 0.1 },
      { column: 'boilingPointAt990PerMilleC', worst: 0.1 },
    ],
  },
  extra: {
    flash: [
      { cookC: 130, vacuumMmHg: 600, moistureBeforePercent: 7.09, afterC: 95.8, moistureAfterPercent: 4.38 },
      { cookC: 130, vacuumMmHg: 700, moistureBeforePercent: 7.09, afterC: 78.7, moistureAfterPercent: 2.96 },
      { cookC: 130, vacuumMmHg: 720, moistureBeforePercent: 7.09, afterC: 72.4, moistureAfterPercent: 2.42 },
      { cookC: 135, vacuumMmHg: 600, moistureBeforePercent: 5.76, afterC: 101.5, moistureAfterPercent: 3.11 },
      { cookC: 135, vacuumMmHg: 700, moistureBeforePercent: 5.76, afterC: 84.6, moistureAfterPercent: 1.73 },
      { cookC: 135, vacuumMmHg: 720, moistureBeforePercent: 5.76, afterC: 78.7, moistureAfterPercent: 1.23 },
      { cookC: 138, vacuumMmHg: 600, moistureBeforePercent: 5.05, afterC: 104.7, moistureAfterPercent: 2.43 },
      { cookC: 138, vacuumMmHg: 700, moistureBeforePercent: 5.05, afterC: 88.4, moistureAfterPercent: 1.1 },
      { cookC: 138, vacuumMmHg: 720, moistureBeforePercent: 5.05, afterC: 83.5, moistureAfterPercent: 0.7 },
      { cookC: 140, vacuumMmHg: 600, moistureBeforePercent: 4.61, afterC: 106.7, moistureAfterPercent: 2 },
      { cookC: 140, vacuumMmHg: 700, moistureBeforePercent: 4.61, afterC: 91.5, moistureAfterPercent: 0.76 },
      { cookC: 140, vacuumMmHg: 720, moistureBeforePercent: 4.61, afterC: 87.9, moistureAfterPercent: 0.46 },
    ],
  },
  notes: [
    'Equilibrium limits, not reached in practice: dry mass below about 100 °C is too stiff.',
    'Common practice: boil to 135 to 140 °C, then hold 700 to 720 mmHg of vacuum for a few minutes; 1 to 2 % water is left. Only in a vessel built for it.',
  ],
  check: {
    rows: 5,
    sums: {
      vacuumMmHg: 3405,
      pressurePa: 52662,
      boilingPointAt950PerMilleC: 365.4,
      boilingPointAt970PerMilleC: 407.1,
      boilingPointAt980PerMilleC: 431,
      boilingPointAt985PerMilleC: 443.9,
      boilingPointAt990PerMilleC: 460.4,
    },
  },
} as const satisfies EvidenceTable;
