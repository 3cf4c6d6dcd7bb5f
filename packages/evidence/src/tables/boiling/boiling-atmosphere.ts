import type { EvidenceTable } from '../../types.js';

/** Air pressure and the boiling point of water against elevation. */
export const boilingAtmosphereTable = {
  id: 'boiling-atmosphere',
  title: 'Air pressure and the boiling point of water against elevation',
  source: {
    authors: 'NOAA, NASA, USAF; ISO',
    year: '1976',
    title: 'U.S. Standard Atmosphere 1976; ISO 2533:1975',
    locator: 'lowest layer',
  },
  grade: 'derived',
  did: 'Constants seen on a university page; the rows are computed from them.',
  address: 'http://scipp.ucsc.edu/outreach/balloon/atmos/1976%20Standard%20Atmosphere.htm',
  units: {
    elevationM: 'm (geopotential)',
    pressurePa: 'Pa',
    pressureMmHg: 'mmHg',
    waterBoilingPointC: '°C',
  },
  constants: {
    seaLevelPressurePa: 101325,
    seaLevelTemperatureK: 288.15,
    lapseRateKPerM: 0.0065,
    gravityMPerS2: 9.80665,
    airMolarMassKgPerMol: 0.0289644,
    gasConstantJPerMolK: 8.31432,
    exponent: 5.255876,
  },
  rows: [
    { elevationM: 0, pressurePa: 101325, pressureMmHg: 760, waterBoilingPointC: 99.97 },
    { elevationM: 250, pressurePa: 98358, pressureMmHg: 737.7, waterBoilingPointC: 99.14 },
    { elevationM: 500, pressurePa: 95461, pressureMmHg: 716, waterBoilingPointC: 98.31 },
    { elevationM: 750, pressurePa: 92634, pressureMmHg: 694.8, waterBoilingPointC: 97.48 },
    { elevationM: 1000, pressurePa: 89875, pressureMmHg: 674.1, waterBoilingPointC: 96.65 },
    { elevationM: 1250, pressurePa: 87182, pressureMmHg: 653.9, waterBoilingPointC: 95.82 },
    { elevationM: 1500, pressurePa: 84556, pressureMmHg: 634.2, waterBoilingPointC: 94.98 },
    { elevationM: 1609, pressurePa: 83431, pressureMmHg: 625.8, waterBoilingPointC: 94.62 },
    { elevationM: 1750, pressurePa: 81994, pressureMmHg: 615, waterBoilingPointC: 94.15 },
    { elevationM: 2000, pressurePa: 79495, pressureMmHg: 596.3, waterBoilingPointC: 93.32 },
    { elevationM: 2250, pressurePa: 77058, pressureMmHg: 578, waterBoilingPointC: 92.48 },
    { elevationM: 2500, pressurePa: 74683, pressureMmHg: 560.2, waterBoilingPointC: 91.64 },
    { elevationM: 3000, pressurePa: 70109, pressureMmHg: 525.9, waterBoilingPointC: 89.97 },
    { elevationM: 3500, pressurePa: 65764, pressureMmHg: 493.3, waterBoilingPointC: 88.3 },
    { elevationM: 4000, pressurePa: 61640, pressureMmHg: 462.3, waterBoilingPointC: 86.62 },
    { elevationM: 4500, pressurePa: 57728, pressureMmHg: 433, waterBoilingPointC: 84.94 },
  ],
  tolerance: {
    text: '1 Pa; 0.01 °C.',
    limits: [
      { column: 'pressurePa', worst: 1 },
      { column: 'waterBoilingPointC', worst: 0.01 },
    ],
  },
  notes: [
    'The standard prints 95461, 89874 to 89876, 84556, 79495, 70108 to 70109 and 61640 Pa at 500, 1000, 1500, 2000, 3000 and 4000 m (recalled).',
    'Geometric altitude differs from geopotential by under 0.05 % below 4 km.',
    'Boiling points are this pressure put through the saturation equation of water.',
  ],
  smooth: [
    { x: 'elevationM', y: 'pressurePa' },
    { x: 'elevationM', y: 'pressureMmHg' },
    { x: 'elevationM', y: 'waterBoilingPointC' },
  ],
  check: {
    rows: 16,
    sums: {
      elevationM: 30359,
      pressurePa: 1301293,
      pressureMmHg: 9760.5,
      waterBoilingPointC: 1498.39,
    },
  },
} as const satisfies EvidenceTable;
