// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** End points of other sugar boils. */
export const practiceOtherBoilsTable = {
  id: 'practice-other-boils',
  title: 'End points of other sugar boils',
  source: {
    authors: 'Lees, R., Jackson, E.B.; Jackson, E.B.; Greweling, P.; Charley, H., Weaver, C.',
    year: '1973 to 2007',
    title: 'Textbooks of confectionery and food science',
    locator: 'recalled',
  },
  grade: 'memory',
  did: 'Recalled and not found again.',
  units: {
    lowC: '°C',
    highC: '°C',
    lowF: '°F',
    highF: '°F',
    solidsLowPercent: '% total solids',
    solidsHighPercent: '% total solids',
  },
  rows: [
    { sweet: 'fondant', lowC: 113, highC: 117, lowF: 236, highF: 242, solidsLowPercent: 88, solidsHighPercent: 90, syrupOnly: false, note: 'Soft ball; cream of tartar 0.05 to 0.1 % or 10 to 20 % glucose solids; beaten from 40 to 50 °C.' },
    { sweet: 'fudge', lowC: 113, highC: 118, lowF: 236, highF: 244, solidsLowPercent: 90, solidsHighPercent: 92, syrupOnly: false, note: 'Beaten from 45 to 55 °C.' },
    { sweet: 'soft caramel', lowC: 117, highC: 121, lowF: 243, highF: 250, solidsLowPercent: 88, solidsHighPercent: 92, syrupOnly: false, note: 'Total solids with fat and milk.' },
    { sweet: 'toffee, English chewy', lowC: 125, highC: 140, lowF: 257, highF: 284, solidsLowPercent: 92, solidsHighPercent: 95, syrupOnly: false },
    { sweet: 'butter toffee / butterscotch crunch', lowC: 145, highC: 154, lowF: 293, highF: 309, solidsLowPercent: 97, solidsHighPercent: 98, syrupOnly: false },
    { sweet: 'nougat syrup (soft)', lowC: 125, highC: 135, lowF: 257, highF: 275, solidsLowPercent: 91, solidsHighPercent: 94, syrupOnly: true, note: 'Poured on whipped egg white.' },
    { sweet: 'nougat syrup (hard)', lowC: 140, highC: 150, lowF: 284, highF: 302, solidsLowPercent: 96, solidsHighPercent: 98, syrupOnly: true },
    { sweet: 'marshmallow syrup', lowC: 112, highC: 118, lowF: 234, highF: 245, solidsLowPercent: 80, solidsHighPercent: 84, syrupOnly: false, note: 'With the water of the gelatine; solids of the finished sweet.' },
    { sweet: 'divinity', lowC: 121, highC: 127, lowF: 250, highF: 260, solidsLowPercent: 91, solidsHighPercent: 93, syrupOnly: true },
    { sweet: 'taffy to pull', lowC: 121, highC: 130, lowF: 250, highF: 266, solidsLowPercent: 92, solidsHighPercent: 95, syrupOnly: false },
    { sweet: 'brittle', lowC: 149, highC: 154, lowF: 300, highF: 310, solidsLowPercent: 98, solidsHighPercent: 99, syrupOnly: false, note: '0.5 to 1 % bicarbonate off the heat.' },
    { sweet: 'Italian meringue syrup', lowC: 115, highC: 121, lowF: 239, highF: 250, solidsLowPercent: 85, solidsHighPercent: 89, syrupOnly: true },
    { sweet: 'lollipop / drop / rock', lowC: 146, highC: 154, lowF: 295, highF: 310, solidsLowPercent: 97, solidsHighPercent: 99, syrupOnly: false },
    { sweet: 'spun sugar', lowC: 150, highC: 160, lowF: 302, highF: 320, solidsLowPercent: 99, solidsHighPercent: 99, syrupOnly: false },
  ],
  notes: [
    'Only the boil of the sugars is modelled; fat, milk, egg and gelatine are not solutes.',
    'The solids printed are often higher than the boiling curve at that temperature: beating and cooling dry, other ingredients add.',
  ],
  check: {
    rows: 14,
    sums: {
      lowC: 1792,
      highC: 1899,
      lowF: 3676,
      highF: 3867,
      solidsLowPercent: 1284,
      solidsHighPercent: 1317,
    },
  },
} as const satisfies EvidenceTable;
