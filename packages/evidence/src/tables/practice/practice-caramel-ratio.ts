import type { EvidenceTable } from '../../types.js';

/** Caramel of one firmness: lower stop temperature as syrup replaces sugar. */
export const practiceCaramelRatioTable = {
  id: 'practice-caramel-ratio',
  title: 'Caramel of one firmness: lower stop temperature as syrup replaces sugar',
  source: {
    authors: 'Lowe, B.',
    year: '1943',
    title: 'Experimental Cookery',
    locator: 'caramel experiment',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  units: {
    sugarCups: 'US cup',
    glucoseSyrupCups: 'US cup',
    milkCups: 'US cup',
    cookLowC: '°C',
    cookHighC: '°C',
  },
  rows: [
    { sugarCups: 2, glucoseSyrupCups: 1, milkCups: 3, cookLowC: 119, cookHighC: 121 },
    { sugarCups: 1.5, glucoseSyrupCups: 1.5, milkCups: 3, cookLowC: 118, cookHighC: 118 },
    { sugarCups: 1, glucoseSyrupCups: 2, milkCups: 3, cookLowC: 116, cookHighC: 117 },
  ],
  notes: [
    '121 °C when all the milk goes in at once.',
    'Base batch: 400 g sugar, 328 g glucose syrup, 28 g butter, 732 g milk.',
  ],
  check: {
    rows: 3,
    sums: {
      sugarCups: 4.5,
      glucoseSyrupCups: 4.5,
      milkCups: 9,
      cookLowC: 353,
      cookHighC: 356,
    },
  },
} as const satisfies EvidenceTable;
