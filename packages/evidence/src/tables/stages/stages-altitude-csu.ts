// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Finish temperatures at altitude, extension sheet as printed. */
export const stagesAltitudeCsuTable = {
  id: 'stages-altitude-csu',
  title: 'Finish temperatures at altitude, extension sheet as printed',
  source: {
    authors: 'Colorado State University Extension',
    year: 'n.d.',
    title: 'Candy making at high elevation',
    locator: 'table',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  address: 'https://foodsmartcolorado.colostate.edu/food-safety/safe-preparation-handling-and-storage/candy-making-at-high-elevation',
  units: {
    elevationFt: 'ft',
    elevationM: 'm',
    lowF: '°F',
    highF: '°F',
    dropLowF: '°F',
    dropHighF: '°F',
  },
  rows: [
    { stage: 'soft-ball', elevationFt: 0, elevationM: 0, lowF: 234, highF: 240, dropLowF: 0, dropHighF: 0 },
    { stage: 'soft-ball', elevationFt: 5000, elevationM: 1524, lowF: 224, highF: 230, dropLowF: 10, dropHighF: 10 },
    { stage: 'soft-ball', elevationFt: 7500, elevationM: 2286, lowF: 219, highF: 225, dropLowF: 15, dropHighF: 15 },
    { stage: 'firm-ball', elevationFt: 0, elevationM: 0, lowF: 244, highF: 248, dropLowF: 0, dropHighF: 0 },
    { stage: 'firm-ball', elevationFt: 5000, elevationM: 1524, lowF: 232, highF: 238, dropLowF: 12, dropHighF: 10 },
    { stage: 'firm-ball', elevationFt: 7500, elevationM: 2286, lowF: 227, highF: 233, dropLowF: 17, dropHighF: 15 },
    { stage: 'hard-ball', elevationFt: 0, elevationM: 0, lowF: 250, highF: 260, dropLowF: 0, dropHighF: 0 },
    { stage: 'hard-ball', elevationFt: 5000, elevationM: 1524, lowF: 241, highF: 258, dropLowF: 9, dropHighF: 2, note: 'The upper end drops by 2 °F where the sheet states 10.', suspect: true },
    { stage: 'hard-ball', elevationFt: 7500, elevationM: 2286, lowF: 235, highF: 253, dropLowF: 15, dropHighF: 7, note: 'The upper end drops by 7 °F where the sheet states 15.', suspect: true },
    { stage: 'soft-crack', elevationFt: 0, elevationM: 0, lowF: 270, highF: 284, dropLowF: 0, dropHighF: 0 },
    { stage: 'soft-crack', elevationFt: 5000, elevationM: 1524, lowF: 260, highF: 280, dropLowF: 10, dropHighF: 4, note: 'The upper end drops by 4 °F where the sheet states 10.', suspect: true },
    { stage: 'soft-crack', elevationFt: 7500, elevationM: 2286, lowF: 255, highF: 275, dropLowF: 15, dropHighF: 9, note: 'The upper end drops by 9 °F where the sheet states 15.', suspect: true },
    { stage: 'hard-crack', elevationFt: 0, elevationM: 0, lowF: 300, highF: 308, dropLowF: 0, dropHighF: 0 },
    { stage: 'hard-crack', elevationFt: 5000, elevationM: 1524, lowF: 290, highF: 300, dropLowF: 10, dropHighF: 8 },
    { stage: 'hard-crack', elevationFt: 7500, elevationM: 2286, lowF: 285, highF: 295, dropLowF: 15, dropHighF: 13 },
  ],
  notes: [
    'The altitude columns equal sea level minus 2 °F per 1000 ft if the sea-level column once read 234 to 240, 242 to 248, 250 to 268, 270 to 290 and 300 to 310; it seems to have been edited later, and 241 is a slip for 240.',
    'Test against the rule, never against the difference of the printed columns.',
  ],
  check: {
    rows: 15,
    sums: {
      elevationFt: 62500,
      elevationM: 19050,
      lowF: 3766,
      highF: 3927,
      dropLowF: 128,
      dropHighF: 93,
    },
  },
} as const satisfies EvidenceTable;
