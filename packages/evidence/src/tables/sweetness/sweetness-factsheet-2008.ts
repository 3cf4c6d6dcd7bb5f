import type { EvidenceTable } from '../../types.js';

/** Sweetness and energy of polyols in a consumer fact sheet. */
export const sweetnessFactsheet2008Table = {
  id: 'sweetness-factsheet-2008',
  title: 'Sweetness and energy of polyols in a consumer fact sheet',
  source: {
    authors: 'a food-information body of the industry',
    year: '2008',
    title: 'Sugar alcohols fact sheet',
    locator: 'chart, as reprinted',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    sweetnessLow: 'sucrose = 1',
    sweetnessHigh: 'sucrose = 1',
    energyKcalPerG: 'kcal/g',
  },
  rows: [
    { species: 'sorbitol', sweetnessLow: 0.5, sweetnessHigh: 0.7, energyKcalPerG: 2.6 },
    { species: 'xylitol', sweetnessLow: 1, sweetnessHigh: 1, energyKcalPerG: 2.4 },
    { species: 'maltitol', sweetnessLow: 0.75, sweetnessHigh: 0.75, energyKcalPerG: 2.1 },
    { species: 'isomalt', sweetnessLow: 0.45, sweetnessHigh: 0.65, energyKcalPerG: 2 },
    { species: 'lactitol', sweetnessLow: 0.3, sweetnessHigh: 0.4, energyKcalPerG: 2 },
    { species: 'mannitol', sweetnessLow: 0.5, sweetnessHigh: 0.7, energyKcalPerG: 1.6 },
    { species: 'erythritol', sweetnessLow: 0.6, sweetnessHigh: 0.8, energyKcalPerG: 0.2 },
    { species: 'hsh', sweetnessLow: 0.25, sweetnessHigh: 0.5, energyKcalPerG: 3 },
  ],
  tolerance: {
    text: 'The printed range meets the recommended one in 8 of 8.',
    limits: [{ column: 'sweetnessLow', insideBand: true }],
  },
  notes: ['The energy of erythritol is printed as 0 to 0.2.'],
  check: {
    rows: 8,
    sums: {
      sweetnessLow: 4.35,
      sweetnessHigh: 5.5,
      energyKcalPerG: 15.9,
    },
  },
} as const satisfies EvidenceTable;
