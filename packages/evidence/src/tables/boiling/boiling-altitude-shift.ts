// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** How much lower each stage boils at altitude, beside the kitchen rule. */
export const boilingAltitudeShiftTable = {
  id: 'boiling-altitude-shift',
  title: 'How much lower each stage boils at altitude, beside the kitchen rule',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Computed with the boiling model at equal solids',
    locator: 'sucrose; standard atmosphere',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: {
    elevationFt: 'ft',
    elevationM: 'm',
    pressurePa: 'Pa',
    shiftByRuleF: '°F',
    shiftWaterF: '°F',
    shiftSoftBallF: '°F',
    shiftFirmBallF: '°F',
    shiftHardBallF: '°F',
    shiftSoftCrackF: '°F',
    shiftHardCrackF: '°F',
  },
  rows: [
    { elevationFt: 1000, elevationM: 305, pressurePa: 97717, shiftByRuleF: 2, shiftWaterF: 1.8, shiftSoftBallF: 2, shiftFirmBallF: 2, shiftHardBallF: 2.1, shiftSoftCrackF: 2.1, shiftHardCrackF: 2.2 },
    { elevationFt: 2000, elevationM: 610, pressurePa: 94213, shiftByRuleF: 4, shiftWaterF: 3.6, shiftSoftBallF: 3.9, shiftFirmBallF: 4, shiftHardBallF: 4.1, shiftSoftCrackF: 4.3, shiftHardCrackF: 4.4 },
    { elevationFt: 3000, elevationM: 914, pressurePa: 90812, shiftByRuleF: 6, shiftWaterF: 5.5, shiftSoftBallF: 5.9, shiftFirmBallF: 6, shiftHardBallF: 6.2, shiftSoftCrackF: 6.4, shiftHardCrackF: 6.5 },
    { elevationFt: 4000, elevationM: 1219, pressurePa: 87511, shiftByRuleF: 8, shiftWaterF: 7.3, shiftSoftBallF: 7.8, shiftFirmBallF: 7.9, shiftHardBallF: 8.3, shiftSoftCrackF: 8.6, shiftHardCrackF: 8.7 },
    { elevationFt: 5000, elevationM: 1524, pressurePa: 84307, shiftByRuleF: 10, shiftWaterF: 9.1, shiftSoftBallF: 9.8, shiftFirmBallF: 9.9, shiftHardBallF: 10.4, shiftSoftCrackF: 10.7, shiftHardCrackF: 10.9 },
    { elevationFt: 6000, elevationM: 1829, pressurePa: 81200, shiftByRuleF: 12, shiftWaterF: 11, shiftSoftBallF: 11.8, shiftFirmBallF: 11.9, shiftHardBallF: 12.4, shiftSoftCrackF: 12.9, shiftHardCrackF: 13.1 },
    { elevationFt: 7000, elevationM: 2134, pressurePa: 78185, shiftByRuleF: 14, shiftWaterF: 12.8, shiftSoftBallF: 13.7, shiftFirmBallF: 13.9, shiftHardBallF: 14.5, shiftSoftCrackF: 15, shiftHardCrackF: 15.3 },
    { elevationFt: 7500, elevationM: 2286, pressurePa: 76713, shiftByRuleF: 15, shiftWaterF: 13.7, shiftSoftBallF: 14.7, shiftFirmBallF: 14.9, shiftHardBallF: 15.6, shiftSoftCrackF: 16.1, shiftHardCrackF: 16.4 },
    { elevationFt: 8000, elevationM: 2438, pressurePa: 75262, shiftByRuleF: 16, shiftWaterF: 14.6, shiftSoftBallF: 15.7, shiftFirmBallF: 15.9, shiftHardBallF: 16.6, shiftSoftCrackF: 17.2, shiftHardCrackF: 17.5 },
    { elevationFt: 10000, elevationM: 3048, pressurePa: 69682, shiftByRuleF: 20, shiftWaterF: 18.3, shiftSoftBallF: 19.6, shiftFirmBallF: 19.9, shiftHardBallF: 20.8, shiftSoftCrackF: 21.5, shiftHardCrackF: 21.8 },
  ],
  tolerance: {
    text: 'The rounding of the table, 0.05 °F.',
    limits: [
      { column: 'shiftWaterF', worst: 0.06 },
      { column: 'shiftSoftBallF', worst: 0.06 },
      { column: 'shiftFirmBallF', worst: 0.06 },
      { column: 'shiftHardBallF', worst: 0.06 },
      { column: 'shiftSoftCrackF', worst: 0.06 },
      { column: 'shiftHardCrackF', worst: 0.06 },
    ],
  },
  notes: [
    'Computed, not measured.',
    'Solids held equal: 0.85 soft ball, 0.87 firm ball, 0.92 hard ball, 0.95 soft crack, 0.975 hard crack.',
  ],
  smooth: [
    { x: 'elevationFt', y: 'pressurePa' },
    { x: 'elevationFt', y: 'shiftWaterF' },
    { x: 'elevationFt', y: 'shiftSoftBallF' },
    { x: 'elevationFt', y: 'shiftFirmBallF' },
    { x: 'elevationFt', y: 'shiftHardBallF' },
    { x: 'elevationFt', y: 'shiftSoftCrackF' },
    { x: 'elevationFt', y: 'shiftHardCrackF' },
  ],
  check: {
    rows: 10,
    sums: {
      elevationFt: 53500,
      elevationM: 16307,
      pressurePa: 835602,
      shiftByRuleF: 107,
      shiftWaterF: 97.7,
      shiftSoftBallF: 104.9,
      shiftFirmBallF: 106.3,
      shiftHardBallF: 111,
      shiftSoftCrackF: 114.8,
      shiftHardCrackF: 116.8,
    },
  },
} as const satisfies EvidenceTable;
