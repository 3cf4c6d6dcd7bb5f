// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Sweetness of glucose syrups in a sugar handbook. */
export const syrupSweetnessTable = {
  id: 'syrup-sweetness',
  title: 'Sweetness of glucose syrups in a sugar handbook',
  source: {
    authors: 'Pancoast, H.M.; Junk, W.R.',
    year: '1980',
    title: 'Handbook of Sugars',
    locator: 'relative sweetness table',
  },
  grade: 'memory',
  did: 'Recalled and not found again.',
  units: {
    dextroseEquivalent: '0 to 100',
    lowPercentOfSucrose: 'sucrose = 100',
    highPercentOfSucrose: 'sucrose = 100',
  },
  rows: [
    { product: 'glucose syrup', dextroseEquivalent: 30, lowPercentOfSucrose: 30, highPercentOfSucrose: 35 },
    { product: 'glucose syrup', dextroseEquivalent: 36, lowPercentOfSucrose: 35, highPercentOfSucrose: 40 },
    { product: 'glucose syrup', dextroseEquivalent: 42, lowPercentOfSucrose: 40, highPercentOfSucrose: 50 },
    { product: 'glucose syrup', dextroseEquivalent: 54, lowPercentOfSucrose: 50, highPercentOfSucrose: 55 },
    { product: 'glucose syrup', dextroseEquivalent: 62, lowPercentOfSucrose: 60, highPercentOfSucrose: 70 },
    { product: 'glucose syrup, high maltose', dextroseEquivalent: 43, lowPercentOfSucrose: 35, highPercentOfSucrose: 45 },
    { product: 'dextrose', dextroseEquivalent: null, lowPercentOfSucrose: 70, highPercentOfSucrose: 80 },
    { product: 'invert sugar', dextroseEquivalent: null, lowPercentOfSucrose: 85, highPercentOfSucrose: 130 },
  ],
  notes: [
    'Equal solids, moderate concentration; panel values, ± 10 at best.',
    'The library does not use this table: it uses the handbook bands by DE and their fit.',
    'Sale and Skinner (1922) measured invert sugar at 85; textbooks say 100 to 130.',
  ],
  check: {
    rows: 8,
    sums: {
      dextroseEquivalent: 267,
      lowPercentOfSucrose: 405,
      highPercentOfSucrose: 505,
    },
  },
} as const satisfies EvidenceTable;
