// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** The seven stage charts. */
export const stagesSourceListTable = {
  id: 'stages-source-list',
  title: 'The seven stage charts',
  source: {
    authors: 'several',
    year: 'n.d.',
    title: 'Named in each row',
    locator: 'see rows',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {},
  rows: [
    { chart: 'home-economics-1993', authors: 'American Home Economics Association', year: '1993', title: 'Handbook of Food Preparation, 9th ed.', locator: 'table of temperatures and tests for syrups and candies', note: 'The same figures were seen, unsigned.', grade: 'memory' },
    { chart: 'mcgee-2004', authors: 'McGee, H.', year: '2004', title: 'On Food and Cooking, 2nd ed.', locator: 'p. 680 to 681', grade: 'secondary' },
    { chart: 'science-museum', authors: 'a science museum', year: 'n.d.', title: 'Candy-making stages, teaching page', locator: 'stage list', note: 'Thread and soft ball seen in a copy, the other rows recalled.', grade: 'memory' },
    { chart: 'colorado-extension', authors: 'Colorado State University Extension', year: 'n.d.', title: 'Candy making at high elevation', locator: 'sea-level column', address: 'https://foodsmartcolorado.colostate.edu/food-safety/safe-preparation-handling-and-storage/candy-making-at-high-elevation', grade: 'secondary' },
    { chart: 'food-science-lecture-2023', authors: 'a food-science lecture', year: '2023', title: 'Stages of sugar cookery', locator: 'slides', grade: 'secondary' },
    { chart: 'school-deck', authors: 'a school lecture', year: 'n.d.', title: 'Candy stages with sugar concentrations', locator: 'slides', grade: 'secondary' },
    { chart: 'circulating-chart', authors: 'unsigned', year: 'n.d.', title: 'Sugar temperature chart found on many teaching pages', locator: 'chart', grade: 'secondary' },
  ],
  check: {
    rows: 7,
    sums: {
    },
  },
} as const satisfies EvidenceTable;
