import type { EvidenceTable } from '../../types.js';

/** Boiling point of pure water at altitude. */
export const boilingAltitudeWaterTable = {
  id: 'boiling-altitude-water',
  title: 'Boiling point of pure water at altitude',
  source: {
    authors: 'US atmosphere agencies, as listed in an encyclopaedia article',
    year: 'n.d.',
    title: 'High-altitude cooking',
    locator: 'table of boiling points',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: { elevationFt: 'ft', boilingPointF: '°F', boilingPointC: '°C' },
  rows: [
    { elevationFt: 0, boilingPointF: 212, boilingPointC: 100 },
    { elevationFt: 500, boilingPointF: 211.1, boilingPointC: 99.5 },
    { elevationFt: 1000, boilingPointF: 210.2, boilingPointC: 99 },
    { elevationFt: 2000, boilingPointF: 208.4, boilingPointC: 98 },
    { elevationFt: 5000, boilingPointF: 203, boilingPointC: 95 },
    { elevationFt: 6000, boilingPointF: 201.1, boilingPointC: 94 },
    { elevationFt: 8000, boilingPointF: 197.4, boilingPointC: 91.9 },
    { elevationFt: 10000, boilingPointF: 193.6, boilingPointC: 89.8 },
    { elevationFt: 12000, boilingPointF: 189.8, boilingPointC: 87.6 },
    { elevationFt: 14000, boilingPointF: 185.9, boilingPointC: 85.5 },
    { elevationFt: 15000, boilingPointF: 184.1, boilingPointC: 84.5 },
  ],
  tolerance: {
    text: '0.2 °C beside the rounding of the list.',
    limits: [{ column: 'boilingPointC', worst: 0.25 }],
  },
  smooth: [
    { x: 'elevationFt', y: 'boilingPointF' },
    { x: 'elevationFt', y: 'boilingPointC' },
  ],
  check: {
    rows: 11,
    sums: {
      elevationFt: 73500,
      boilingPointF: 2196.6,
      boilingPointC: 1024.8,
    },
  },
} as const satisfies EvidenceTable;
