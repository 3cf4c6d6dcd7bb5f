// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Typical moisture and water activity of sweets. */
export const practiceMoistureAwTable = {
  id: 'practice-moisture-aw',
  title: 'Typical moisture and water activity of sweets',
  source: {
    authors: 'Ergun, R.; Lietha, R.; Hartel, R.W.',
    year: '2010',
    title: 'Moisture and shelf life in sugar confections, Crit. Rev. Food Sci. Nutr. 50:162-192',
    locator: 'summary table',
  },
  grade: 'memory',
  did: 'The article was seen by its abstract only; the table is recalled.',
  address: 'https://doi.org/10.1080/10408390802248833',
  units: {
    moistureLowPercent: '% m/m',
    moistureHighPercent: '% m/m',
    waterActivityLow: '0 to 1',
    waterActivityHigh: '0 to 1',
  },
  rows: [
    { class: 'hard candy', moistureLowPercent: 2, moistureHighPercent: 5, waterActivityLow: 0.25, waterActivityHigh: 0.4 },
    { class: 'caramel, fudge, toffee', moistureLowPercent: 6, moistureHighPercent: 18, waterActivityLow: 0.45, waterActivityHigh: 0.6 },
    { class: 'chewy candies', moistureLowPercent: 6, moistureHighPercent: 10, waterActivityLow: 0.45, waterActivityHigh: 0.6 },
    { class: 'nougat', moistureLowPercent: 5, moistureHighPercent: 10, waterActivityLow: 0.4, waterActivityHigh: 0.65 },
    { class: 'marshmallow', moistureLowPercent: 12, moistureHighPercent: 20, waterActivityLow: 0.6, waterActivityHigh: 0.75 },
    { class: 'gummies, jellies', moistureLowPercent: 8, moistureHighPercent: 22, waterActivityLow: 0.5, waterActivityHigh: 0.75 },
    { class: 'fondants, creams', moistureLowPercent: 10, moistureHighPercent: 18, waterActivityLow: 0.75, waterActivityHigh: 0.84, note: 'Recalled elsewhere as 0.65 to 0.80 for the same review: one is wrong, take 0.65 to 0.84.', suspect: true },
    { class: 'tablets, hard panned', moistureLowPercent: 0, moistureHighPercent: 1, waterActivityLow: 0.4, waterActivityHigh: 0.75 },
  ],
  notes: [
    'Compare 1 to 3 % (Hartel 2012) with 2 to 5 % here.',
  ],
  check: {
    rows: 8,
    sums: {
      moistureLowPercent: 49,
      moistureHighPercent: 104,
      waterActivityLow: 3.8,
      waterActivityHigh: 5.34,
    },
  },
} as const satisfies EvidenceTable;
