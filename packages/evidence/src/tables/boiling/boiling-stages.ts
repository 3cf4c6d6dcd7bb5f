// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Stage names with the sugar content that charts quote. */
export const boilingStagesTable = {
  id: 'boiling-stages',
  title: 'Stage names with the sugar content that charts quote',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'One circulating stage list',
    locator: 'stage list',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    quotedSolidsPercent: '% as quoted',
    lowC: '°C',
    highC: '°C',
    lowF: '°F',
    highF: '°F',
  },
  rows: [
    { stage: 'thread', quotedSolidsPercent: 80, lowC: 110, highC: 112, lowF: 230, highF: 234 },
    { stage: 'soft ball', quotedSolidsPercent: 85, lowC: 112, highC: 116, lowF: 234, highF: 241 },
    { stage: 'firm ball', quotedSolidsPercent: 87, lowC: 118, highC: 120, lowF: 244, highF: 248 },
    { stage: 'hard ball', quotedSolidsPercent: 92, lowC: 121, highC: 130, lowF: 250, highF: 266 },
    { stage: 'soft crack', quotedSolidsPercent: 95, lowC: 132, highC: 143, lowF: 270, highF: 289 },
    { stage: 'hard crack', quotedSolidsPercent: 99, lowC: 146, highC: 154, lowF: 295, highF: 309, note: '99 % is not a measurement: published boiled-sweet moistures at 145 to 155 °C are 1 to 4 %.', suspect: true },
  ],
  tolerance: { text: 'Shown, not gated: the quoted contents are labels.' },
  notes: [
    'The list prints 90 % for hard ball, most others 92 %.',
  ],
  check: {
    rows: 6,
    sums: {
      quotedSolidsPercent: 538,
      lowC: 739,
      highC: 775,
      lowF: 1523,
      highF: 1587,
    },
  },
} as const satisfies EvidenceTable;
