// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Sweetness, energy and glycaemic index of nutritive sweeteners in a review. */
export const sweetnessReview2014Table = {
  id: 'sweetness-review-2014',
  title: 'Sweetness, energy and glycaemic index of nutritive sweeteners in a review',
  source: {
    authors: 'Chattopadhyay, S.; Raychaudhuri, U.; Chakraborty, R.',
    year: '2014',
    title: 'Artificial sweeteners: a review, J. Food Sci. Technol. 51:611-621',
    locator: 'Table 2',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  address: 'https://pmc.ncbi.nlm.nih.gov/articles/PMC3982014/table/Tab2',
  units: {
    sweetnessLow: 'sucrose = 1',
    sweetnessHigh: 'sucrose = 1',
    energyKcalPerG: 'kcal/g',
    giLow: 'glucose = 100',
    giHigh: 'glucose = 100',
  },
  rows: [
    { species: 'erythritol', sweetnessLow: 0.7, sweetnessHigh: 0.7, energyKcalPerG: 0.2, giLow: 0, giHigh: 0 },
    { species: 'glucose', sweetnessLow: 0.5, sweetnessHigh: 0.5, energyKcalPerG: 4, giLow: 100, giHigh: 100, note: '0.5 is low beside every other source.', suspect: true },
    { species: 'fructose', sweetnessLow: 1.5, sweetnessHigh: 1.8, energyKcalPerG: 4, giLow: 19, giHigh: 23 },
    { species: 'hfcs', sweetnessLow: 1, sweetnessHigh: 1.2, energyKcalPerG: 4, giLow: 60, giHigh: 65 },
    { species: 'hsh', sweetnessLow: 0.5, sweetnessHigh: 0.7, energyKcalPerG: null, giLow: null, giHigh: null },
    { species: 'isomalt', sweetnessLow: 0.45, sweetnessHigh: 0.65, energyKcalPerG: 2, giLow: 2, giHigh: 2 },
    { species: 'isomaltulose', sweetnessLow: 0.3, sweetnessHigh: 0.4, energyKcalPerG: 2, giLow: 32, giHigh: 32, note: '2.0 kcal/g is against labelling law, which has 4: isomaltulose is fully digested.', suspect: true },
    { species: 'lactitol', sweetnessLow: 0.35, sweetnessHigh: 0.4, energyKcalPerG: 2.4, giLow: 6, giHigh: 6 },
    { species: 'lactose', sweetnessLow: 0.2, sweetnessHigh: 0.4, energyKcalPerG: 4, giLow: 46, giHigh: 46 },
    { species: 'lactulose', sweetnessLow: 0.6, sweetnessHigh: 0.6, energyKcalPerG: 0.2, giLow: 0, giHigh: 0 },
    { species: 'leucrose', sweetnessLow: 0.5, sweetnessHigh: 0.5, energyKcalPerG: 2, giLow: null, giHigh: null },
    { species: 'maltitol', sweetnessLow: 0.5, sweetnessHigh: 0.9, energyKcalPerG: 3, giLow: 35, giHigh: 52 },
    { species: 'maltose', sweetnessLow: 0.4, sweetnessHigh: 0.4, energyKcalPerG: 4, giLow: 105, giHigh: 105 },
    { species: 'maltulose', sweetnessLow: 0.3, sweetnessHigh: 0.42, energyKcalPerG: null, giLow: null, giHigh: null },
    { species: 'mannitol', sweetnessLow: 0.5, sweetnessHigh: 0.72, energyKcalPerG: 1.6, giLow: 0, giHigh: 0 },
    { species: 'sorbitol', sweetnessLow: 0.6, sweetnessHigh: 0.6, energyKcalPerG: 2.6, giLow: 9, giHigh: 9 },
    { species: 'sucrose', sweetnessLow: 1, sweetnessHigh: 1, energyKcalPerG: 4, giLow: 61, giHigh: 65 },
    { species: 'tagatose', sweetnessLow: 0.92, sweetnessHigh: 0.92, energyKcalPerG: 1.5, giLow: 0, giHigh: 0 },
    { species: 'trehalose', sweetnessLow: 0.5, sweetnessHigh: 0.7, energyKcalPerG: 3.6, giLow: 45, giHigh: 50 },
    { species: 'trehalulose', sweetnessLow: 0.5, sweetnessHigh: 0.7, energyKcalPerG: null, giLow: null, giHigh: null },
    { species: 'xylitol', sweetnessLow: 1, sweetnessHigh: 1, energyKcalPerG: 3, giLow: 7, giHigh: 13 },
  ],
  tolerance: {
    text: 'The printed range meets the recommended one in 17 of 17.',
    limits: [
      { column: 'sweetnessLow', insideBand: true },
    ],
  },
  notes: [
    'Lactulose, leucrose, maltulose and trehalulose have no recommended value.',
    'Information only, never advice.',
  ],
  check: {
    rows: 21,
    sums: {
      sweetnessLow: 12.82,
      sweetnessHigh: 15.21,
      energyKcalPerG: 48.1,
      giLow: 527,
      giHigh: 568,
    },
  },
} as const satisfies EvidenceTable;
