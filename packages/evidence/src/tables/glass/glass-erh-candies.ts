// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Moisture and water activity of confections. */
export const glassErhCandiesTable = {
  id: 'glass-erh-candies',
  title: 'Moisture and water activity of confections',
  source: {
    authors: 'Ergun, R.; Lietha, R.; Hartel, R.W.',
    year: '2010',
    title: 'Moisture and shelf life in sugar confections, Crit. Rev. Food Sci. Nutr. 50:162-192',
    locator: 'table of typical values',
  },
  grade: 'memory',
  did: 'The article was seen, the table is recalled.',
  address: 'http://dx.doi.org/10.1080/10408390802248833',
  units: {
    moistureLowPercent: '% m/m',
    moistureHighPercent: '% m/m',
    waterActivityLow: '0 to 1',
    waterActivityHigh: '0 to 1',
  },
  rows: [
    { product: 'hard candy', moistureLowPercent: 2, moistureHighPercent: 5, waterActivityLow: 0.25, waterActivityHigh: 0.4 },
    { product: 'caramel, fudge, toffee', moistureLowPercent: 6, moistureHighPercent: 18, waterActivityLow: 0.45, waterActivityHigh: 0.6 },
    { product: 'chewy candy', moistureLowPercent: 6, moistureHighPercent: 10, waterActivityLow: 0.45, waterActivityHigh: 0.6 },
    { product: 'nougat', moistureLowPercent: 5, moistureHighPercent: 10, waterActivityLow: 0.4, waterActivityHigh: 0.65 },
    { product: 'marshmallow', moistureLowPercent: 12, moistureHighPercent: 20, waterActivityLow: 0.6, waterActivityHigh: 0.75 },
    { product: 'gummies, jellies', moistureLowPercent: 8, moistureHighPercent: 22, waterActivityLow: 0.5, waterActivityHigh: 0.75 },
    { product: 'jams', moistureLowPercent: 30, moistureHighPercent: 40, waterActivityLow: 0.8, waterActivityHigh: 0.85 },
    { product: 'fondant, creams', moistureLowPercent: 10, moistureHighPercent: 18, waterActivityLow: 0.65, waterActivityHigh: 0.8, note: 'Recalled here as 0.65 to 0.80 and elsewhere as 0.75 to 0.84 for the same review: one is wrong, take 0.65 to 0.84.', suspect: true },
  ],
  notes: [
    'The additive isotherm gives 0.13 at 2 % of water, 0.19 at 3 %, 0.24 at 4 % and 0.29 at 5 %: the published range of hard candy belongs to its wetter end.',
  ],
  check: {
    rows: 8,
    sums: {
      moistureLowPercent: 79,
      moistureHighPercent: 143,
      waterActivityLow: 4.1,
      waterActivityHigh: 5.4,
    },
  },
} as const satisfies EvidenceTable;
