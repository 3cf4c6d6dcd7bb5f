// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Published inversion rates. */
export const inversionCheckRowsTable = {
  id: 'inversion-check-rows',
  title: 'Published inversion rates',
  source: {
    authors: 'several',
    year: '1922 to 2012',
    title: 'Named in each row',
    locator: 'see rows',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    temperatureC: '°C',
    ratePerMin: '1/min',
    byLawPerMin: '1/min',
    invertedPercent: '%',
  },
  rows: [
    { id: 'hydrochloric-23C', publication: 'Brown, LeMay and Bursten, Chemistry: The Central Science, 11th ed., problem 14.35', temperatureC: 23, ratePerMin: 0.00367, byLawPerMin: 0.00273, invertedPercent: null, note: '0.5 mol/L hydrochloric acid, 0.316 mol/L sucrose, 0.94 g water per ml.' },
    { id: 'neutral-27C', publication: 'Burdge and Overby, Chemistry: Atoms First, 2nd ed., problem 17.40', temperatureC: 27, ratePerMin: 1.26e-9, byLawPerMin: 1.042e-9, invertedPercent: null, note: 'pH 7, 0.9965 g water per ml.' },
    { id: 'tartaric-20min', publication: 'Sale and Skinner 1922, J. Ind. Eng. Chem. 14:522, abstract', temperatureC: 104, ratePerMin: null, byLawPerMin: null, invertedPercent: 67, note: '0.021 % tartaric acid boiled 20 min; the share of sugar is not in the abstract, 60 to 70 % gives 64 to 72.' },
    { id: 'hydrochloric-35C', publication: 'a school problem', temperatureC: 35, ratePerMin: 0.0087, byLawPerMin: 0.0152, invertedPercent: null, note: 'Cannot be reconciled with the row at 23 °C, which would ask for 0.020: not a check.', suspect: true },
  ],
  tolerance: {
    text: 'A factor of 1.5 on rates, 10 points on the tartaric row.',
    limits: [
      // A third less is a factor of 1.5; a third more is stricter.
      { column: 'ratePerMin', worst: 0.333, relative: true, rows: { column: 'id', is: ['hydrochloric-23C', 'neutral-27C'] } },
      { column: 'invertedPercent', worst: 10 },
    ],
  },
  extra: {
    hydrochloric23C: { minutes: [0, 39, 80, 140, 210], sucroseMolPerL: [0.316, 0.274, 0.238, 0.19, 0.146] },
  },
  check: {
    rows: 4,
    sums: {
      temperatureC: 189,
      ratePerMin: 0.01237000126,
      byLawPerMin: 0.017930001042,
      invertedPercent: 67,
    },
  },
} as const satisfies EvidenceTable;
