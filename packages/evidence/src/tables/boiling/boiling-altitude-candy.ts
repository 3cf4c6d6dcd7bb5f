// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Finish temperatures of candy at altitude, from an extension sheet. */
export const boilingAltitudeCandyTable = {
  id: 'boiling-altitude-candy',
  title: 'Finish temperatures of candy at altitude, from an extension sheet',
  source: {
    authors: 'Colorado State University Extension',
    year: 'n.d.',
    title: 'Candy making at high elevation',
    locator: 'Table 1',
  },
  grade: 'secondary',
  did: 'Seen in a copy or a quotation, not in the original.',
  address: 'https://foodsmartcolorado.colostate.edu/food-safety/safe-preparation-handling-and-storage/candy-making-at-high-elevation',
  units: {
    seaLevelLowF: '°F',
    seaLevelHighF: '°F',
    at5000FtLowF: '°F',
    at5000FtHighF: '°F',
    at7500FtLowF: '°F',
    at7500FtHighF: '°F',
  },
  rows: [
    { stage: 'soft ball', seaLevelLowF: 234, seaLevelHighF: 240, at5000FtLowF: 224, at5000FtHighF: 230, at7500FtLowF: 219, at7500FtHighF: 225 },
    { stage: 'firm ball', seaLevelLowF: 244, seaLevelHighF: 248, at5000FtLowF: 232, at5000FtHighF: 238, at7500FtLowF: 227, at7500FtHighF: 233, note: 'Falls by 12 and 10 °F to 5000 ft where the sheet states 10.', suspect: true },
    { stage: 'hard ball', seaLevelLowF: 250, seaLevelHighF: 260, at5000FtLowF: 241, at5000FtHighF: 258, at7500FtLowF: 235, at7500FtHighF: 253, note: 'Falls by 9 and 2 °F to 5000 ft where the sheet states 10.', suspect: true },
    { stage: 'soft crack', seaLevelLowF: 270, seaLevelHighF: 284, at5000FtLowF: 260, at5000FtHighF: 280, at7500FtLowF: 255, at7500FtHighF: 275, note: 'The upper end falls by 4 °F to 5000 ft where the sheet states 10.', suspect: true },
    { stage: 'hard crack', seaLevelLowF: 300, seaLevelHighF: 308, at5000FtLowF: 290, at5000FtHighF: 300, at7500FtLowF: 285, at7500FtHighF: 295, note: 'The upper end falls by 8 °F to 5000 ft where the sheet states 10; the lower end is sound.', suspect: true },
  ],
  tolerance: {
    text: 'Soft ball within half a printed degree at both elevations and the lower figure of hard crack within 1.4 °F; the other cells break the rule of the same sheet and are shown only.',
    limits: [
      { column: 'at5000FtLowF', worst: 0.5, rows: { column: 'stage', is: ['soft ball'] } },
      { column: 'at5000FtHighF', worst: 0.5, rows: { column: 'stage', is: ['soft ball'] } },
      { column: 'at7500FtLowF', worst: 0.5, rows: { column: 'stage', is: ['soft ball'] } },
      { column: 'at7500FtHighF', worst: 0.5, rows: { column: 'stage', is: ['soft ball'] } },
      { column: 'at5000FtLowF', worst: 1.4, rows: { column: 'stage', is: ['hard crack'] } },
      { column: 'at7500FtLowF', worst: 1.4, rows: { column: 'stage', is: ['hard crack'] } },
    ],
  },
  notes: [
    'The sheet states 1 °F per 500 ft; several cells break it.',
  ],
  check: {
    rows: 5,
    sums: {
      seaLevelLowF: 1298,
      seaLevelHighF: 1340,
      at5000FtLowF: 1247,
      at5000FtHighF: 1306,
      at7500FtLowF: 1221,
      at7500FtHighF: 1281,
    },
  },
} as const satisfies EvidenceTable;
