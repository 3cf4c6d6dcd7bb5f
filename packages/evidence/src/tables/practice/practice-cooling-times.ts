import type { EvidenceTable } from '../../types.js';

/** Cooling from 140 to 35 °C in air of 22 °C. */
export const practiceCoolingTimesTable = {
  id: 'practice-cooling-times',
  title: 'Cooling from 140 to 35 °C in air of 22 °C',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Estimate with one temperature in the piece',
    locator: 'density 1500 kg/m³, specific heat 2.0 kJ/(kg K)',
  },
  grade: 'derived',
  did: 'Computed here.',
  units: { coefficientWPerM2K: 'W/(m² K)', minutes: 'min' },
  rows: [
    { shape: 'sphere 16 mm', coefficientWPerM2K: 8, minutes: 36.8 },
    { shape: 'sphere 20 mm', coefficientWPerM2K: 8, minutes: 46 },
    { shape: 'sphere 25 mm', coefficientWPerM2K: 8, minutes: 57.4 },
    { shape: 'sphere 20 mm, fan', coefficientWPerM2K: 25, minutes: 14.7 },
    { shape: 'disc 6 mm, both faces', coefficientWPerM2K: 8, minutes: 41.4 },
    { shape: 'disc 8 mm, both faces', coefficientWPerM2K: 8, minutes: 55.1 },
    { shape: 'disc 6 mm, one face (in mould)', coefficientWPerM2K: 8, minutes: 82.7 },
  ],
  tolerance: {
    text: '0.1 min of the formula.',
    limits: [{ column: 'minutes', worst: 0.1 }],
  },
  notes: [
    'Good to a factor of 1.5.',
    'Trade: 15 to 30 min on metal, 30 to 60 in silicone.',
    'Faster than about 10 K/min at the surface cracks.',
  ],
  check: {
    rows: 7,
    sums: {
      coefficientWPerM2K: 73,
      minutes: 334.1,
    },
  },
} as const satisfies EvidenceTable;
