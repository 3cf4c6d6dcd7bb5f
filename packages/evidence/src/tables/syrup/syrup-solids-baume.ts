// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Commercial Baumé and dry substance of glucose syrups. */
export const syrupSolidsBaumeTable = {
  id: 'syrup-solids-baume',
  title: 'Commercial Baumé and dry substance of glucose syrups',
  source: {
    authors: 'Corn Refiners Association',
    year: '1980 to 2018',
    title: 'Critical Data Tables',
    locator: 'Baumé tables',
  },
  grade: 'memory',
  did: 'Recalled and not found again.',
  units: {
    dextroseEquivalent: '0 to 100',
    commercialBaume: 'degree, reading at 140 °F plus 1.00',
    drySolidsPercent: '% m/m',
  },
  constants: { equation: 'specific gravity at 60/15.56 °C = 145/(145 − (Bé − 1))' },
  rows: [
    { dextroseEquivalent: 36, commercialBaume: 43, drySolidsPercent: 79.9 },
    { dextroseEquivalent: 42, commercialBaume: 42, drySolidsPercent: 78 },
    { dextroseEquivalent: 42, commercialBaume: 43, drySolidsPercent: 80.3 },
    { dextroseEquivalent: 42, commercialBaume: 44, drySolidsPercent: 82.2 },
    { dextroseEquivalent: 43, commercialBaume: 43, drySolidsPercent: 80.6, conversion: 'high-maltose' },
    { dextroseEquivalent: 52, commercialBaume: 43, drySolidsPercent: 81.4 },
    { dextroseEquivalent: 63, commercialBaume: 43, drySolidsPercent: 82 },
    { dextroseEquivalent: 63, commercialBaume: 44, drySolidsPercent: 83.9 },
  ],
  tolerance: {
    text: '0.3 points of dry solids. The row of high maltose is read from the line of acid syrups.',
    limits: [{ column: 'drySolidsPercent', worst: 0.3 }],
  },
  notes: [
    '± 0.3 points.',
    '43 °Bé gives 1.4078, or 1.406 g/ml at 60 °C.',
    'That 42 DE at 43 °Bé is the common grade was seen; the solids were not.',
  ],
  check: {
    rows: 8,
    sums: {
      dextroseEquivalent: 383,
      commercialBaume: 345,
      drySolidsPercent: 648.3,
    },
  },
} as const satisfies EvidenceTable;
