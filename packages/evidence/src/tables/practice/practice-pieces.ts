// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Sizes of pieces and moulds. */
export const practicePiecesTable = {
  id: 'practice-pieces',
  title: 'Sizes of pieces and moulds',
  source: {
    authors: 'Common practice',
    year: 'n.d.',
    title: 'Common practice of the trade',
    locator: 'none',
  },
  grade: 'practice',
  did: 'Common practice of the trade; no publication stands behind it.',
  units: {
    massLowG: 'g',
    massHighG: 'g',
    volumeLowMl: 'ml',
    volumeHighMl: 'ml',
  },
  rows: [
    { piece: 'mini drop', massLowG: 2, massHighG: 2.5, volumeLowMl: 1.3, volumeHighMl: 1.7 },
    { piece: 'standard drop / lozenge', massLowG: 3, massHighG: 5, volumeLowMl: 2, volumeHighMl: 3.3 },
    { piece: 'large wrapped sweet', massLowG: 6, massHighG: 8, volumeLowMl: 4, volumeHighMl: 5.3 },
    { piece: 'small flat lollipop', massLowG: 6, massHighG: 10, volumeLowMl: 4, volumeHighMl: 7 },
    { piece: 'standard ball lollipop', massLowG: 10, massHighG: 14, volumeLowMl: 6.7, volumeHighMl: 9.3 },
    { piece: 'large ball lollipop', massLowG: 17, massHighG: 25, volumeLowMl: 11, volumeHighMl: 17 },
    { piece: 'giant / swirl', massLowG: 50, massHighG: 150, volumeLowMl: 33, volumeHighMl: 100 },
  ],
  notes: [
    'Volume is mass over 1.50 g/ml.',
    'Sugar glass 1.50 to 1.54 g/ml (recalled), pulled sugar 1.2 to 1.4.',
  ],
  check: {
    rows: 7,
    sums: {
      massLowG: 94,
      massHighG: 214.5,
      volumeLowMl: 62,
      volumeHighMl: 143.6,
    },
  },
} as const satisfies EvidenceTable;
