// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Altitude rules in print. */
export const stagesAltitudeRulesTable = {
  id: 'stages-altitude-rules',
  title: 'Altitude rules in print',
  source: {
    authors: 'several',
    year: 'n.d.',
    title: 'Named in each row',
    locator: 'see rows',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: { shiftFPer1000Ft: '°F per 1000 ft' },
  rows: [
    { publication: 'Colorado State University Extension, Candy making at high altitude', rule: 'subtract 1 °F per 500 ft (2 °F per 1000 ft)', shiftFPer1000Ft: 2, address: 'https://foodsmartcolorado.colostate.edu/recipes/cooking-and-baking/candy-making-at-high-elevation', grade: 'primary' },
    { publication: 'McGee 2004, On Food and Cooking', rule: 'subtract 2 °F (1 °C) per 1000 ft (305 m) from every boiling point', shiftFPer1000Ft: 2, grade: 'primary' },
    { publication: 'Utah State University Extension, Williams 2006', rule: 'subtract what your boiling water lost: 212 °F minus its reading', shiftFPer1000Ft: null, address: 'http://extension.usu.edu/htm/faq/faq_q=453', note: 'By the boiling model 0.7 to 1.8 °F too small a shift at 5000 ft. Example printed: 205 °F, so 7 off, 280 becomes 273.', grade: 'primary' },
    { publication: 'McGee 2004, On Food and Cooking, fruit preserves', rule: 'jam: 2 °F (1 °C) per 500 ft (165 m)', shiftFPer1000Ft: 4, note: 'Twice the candy rule of the same book: a misprint for 1000 ft.', grade: 'primary', suspect: true },
    { publication: 'Household charts', rule: 'cook 1 to 2 °F higher on damp days', shiftFPer1000Ft: null, note: 'Lore: room humidity does not change a boiling point, it changes what happens after the cook.', grade: 'secondary' },
  ],
  check: {
    rows: 5,
    sums: {
      shiftFPer1000Ft: 8,
    },
  },
} as const satisfies EvidenceTable;
