// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Stop temperature and the water that is left. */
export const boilingCandyAnchorsTable = {
  id: 'boiling-candy-anchors',
  title: 'Stop temperature and the water that is left',
  source: {
    authors: 'several',
    year: '2004 to 2012',
    title: 'Named in each row',
    locator: 'see rows',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  address: 'https://wiki.physics.wisc.edu/garage/Hard%20Candy',
  units: {
    boilingPointLowC: '°C',
    boilingPointHighC: '°C',
    moistureLowPercent: '% m/m',
    moistureHighPercent: '% m/m',
  },
  rows: [
    { publication: 'University course notes on hard candy', what: 'sucrose and glucose syrup, hard candy', boilingPointLowC: 148, boilingPointHighC: 152, moistureLowPercent: 3, moistureHighPercent: 4, grade: 'secondary' },
    { publication: 'Hartel 2012, Hard candy: from hard crack to the glass transition', what: 'hard candy, hard crack', boilingPointLowC: 145, boilingPointHighC: 152, moistureLowPercent: 1, moistureHighPercent: 3, grade: 'secondary' },
    { publication: 'McGee 2004, On Food and Cooking', what: 'sugar syrup, fudge', boilingPointLowC: 113, boilingPointHighC: 113, moistureLowPercent: 15, moistureHighPercent: 15, grade: 'secondary' },
    { publication: 'McGee 2004, On Food and Cooking', what: 'sugar syrup, taffy', boilingPointLowC: 132, boilingPointHighC: 132, moistureLowPercent: 10, moistureHighPercent: 10, note: 'Does not agree with the next row of the same book.', grade: 'secondary' },
    { publication: 'McGee 2004, On Food and Cooking, graph caption', what: 'sugar syrup, about 90 % solids', boilingPointLowC: 121, boilingPointHighC: 125, moistureLowPercent: 10, moistureHighPercent: 10, note: 'Prints 250 °F beside 125 °C; 250 °F is 121 °C.', grade: 'secondary', suspect: true },
    { publication: 'McGee 2004, On Food and Cooking, stage box', what: 'above this more than 99 % sucrose', boilingPointLowC: 165, boilingPointHighC: 165, moistureLowPercent: 0, moistureHighPercent: 1, grade: 'secondary' },
    { publication: 'Isomalt practice', what: 'isomalt melt boiled in the open', boilingPointLowC: 155, boilingPointHighC: 170, moistureLowPercent: 1, moistureHighPercent: 2, grade: 'practice' },
  ],
  notes: [
    'Sources differ by up to 2 % of water at one temperature; that is the honest uncertainty of the trade.',
    'The address belongs to the first row.',
  ],
  check: {
    rows: 7,
    sums: {
      boilingPointLowC: 979,
      boilingPointHighC: 1009,
      moistureLowPercent: 40,
      moistureHighPercent: 45,
    },
  },
} as const satisfies EvidenceTable;
