import type { EvidenceTable } from '../../types.js';

/** What the weather does to boiling water. */
export const stagesPressureComputedTable = {
  id: 'stages-pressure-computed',
  title: 'What the weather does to boiling water',
  source: {
    authors: 'IAPWS',
    year: '2012',
    title: 'IAPWS R7-97(2012), industrial formulation',
    locator: 'equation 31; rows computed here',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    pressureHPa: 'hPa',
    waterBoilingPointC: '°C',
    waterBoilingPointF: '°F',
  },
  rows: [
    { pressureHPa: 960, waterBoilingPointC: 98.47, waterBoilingPointF: 209.24 },
    { pressureHPa: 970, waterBoilingPointC: 98.76, waterBoilingPointF: 209.76 },
    { pressureHPa: 980, waterBoilingPointC: 99.04, waterBoilingPointF: 210.28 },
    { pressureHPa: 990, waterBoilingPointC: 99.33, waterBoilingPointF: 210.79 },
    { pressureHPa: 1000, waterBoilingPointC: 99.61, waterBoilingPointF: 211.29 },
    { pressureHPa: 1013.25, waterBoilingPointC: 99.97, waterBoilingPointF: 211.95 },
    { pressureHPa: 1020, waterBoilingPointC: 100.16, waterBoilingPointF: 212.29 },
    { pressureHPa: 1030, waterBoilingPointC: 100.43, waterBoilingPointF: 212.78 },
    { pressureHPa: 1040, waterBoilingPointC: 100.71, waterBoilingPointF: 213.27 },
  ],
  tolerance: {
    text: '0.01 °C.',
    limits: [{ column: 'waterBoilingPointC', worst: 0.01 }],
  },
  notes: [
    '0.0276 °C (0.050 °F) per hPa near 1013 hPa: a low of 20 hPa is worth 0.55 °C, as much as about 550 ft of climb.',
  ],
  smooth: [
    { x: 'pressureHPa', y: 'waterBoilingPointC' },
    { x: 'pressureHPa', y: 'waterBoilingPointF' },
  ],
  check: {
    rows: 9,
    sums: {
      pressureHPa: 9003.25,
      waterBoilingPointC: 896.48,
      waterBoilingPointF: 1901.65,
    },
  },
} as const satisfies EvidenceTable;
