// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** What a drop does in cold water. */
export const stagesColdWaterTestTable = {
  id: 'stages-cold-water-test',
  title: 'What a drop does in cold water',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'Common to stage charts, in our words',
    locator: 'none',
  },
  grade: 'practice',
  did: 'Common practice of the trade; no publication stands behind it.',
  units: {},
  rows: [
    { stage: 'thread', inWater: 'dissolves into a cloud or a soft thread that will not gather', outOfWater: 'pulls a thread of about 5 cm (2 in) from the spoon', uses: 'syrups, preserves, fruit glacé' },
    { stage: 'soft-ball', inWater: 'gathers to a soft ball', outOfWater: 'taken out of the cold water, flattens at once between the fingers', uses: 'fondant, fudge, pralines, buttercream' },
    { stage: 'firm-ball', inWater: 'firm ball', outOfWater: 'keeps its shape, flattens under light pressure or slowly by itself', uses: 'soft caramels' },
    { stage: 'hard-ball', inWater: 'hard ball, still plastic', outOfWater: 'keeps its shape under pressure, can be deformed', uses: 'nougat, divinity, marshmallow syrup, taffy to pull' },
    { stage: 'soft-crack', inWater: 'separates into threads, bends before breaking', outOfWater: 'hard but elastic, sticks to teeth', uses: 'butterscotch, taffy, some toffees' },
    { stage: 'hard-crack', inWater: 'separates into brittle threads, audible crack', outOfWater: 'snaps clean, does not stick to teeth', uses: 'boiled sweets, lollipops, brittle, pulled sugar' },
  ],
  notes: [
    'Pan off the heat while testing; half a teaspoon into about 200 ml of water at 10 to 15 °C, very cold and not iced; fresh water and a clean spoon each time; wait 5 to 10 s.',
    'The test is of texture, so it needs no correction for altitude.',
    'Touch only what has lain in the cold water; never test syrup from the pan between the fingers: it burns.',
  ],
  check: {
    rows: 6,
    sums: {
    },
  },
} as const satisfies EvidenceTable;
