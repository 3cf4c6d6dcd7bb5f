// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Worked blends of syrups and powders. */
export const syrupBlendExamplesTable = {
  id: 'syrup-blend-examples',
  title: 'Worked blends of syrups and powders',
  source: {
    authors: 'The Vitrose contributors',
    year: '2026',
    title: 'Mass balance on dry solids',
    locator: 'arithmetic',
  },
  grade: 'derived',
  did: 'Arithmetic of a mass balance on dry solids.',
  units: {
    targetMassG: 'g',
    targetDrySolidsMassFraction: '0 to 1',
    targetDextroseEquivalent: '0 to 100',
    aDrySolidsMassFraction: '0 to 1',
    aDextroseEquivalent: '0 to 100',
    bDrySolidsMassFraction: '0 to 1',
    bDextroseEquivalent: '0 to 100',
    aG: 'g',
    bG: 'g',
    waterG: 'g',
  },
  rows: [
    { id: 'two-way', targetMassG: 1000, targetDrySolidsMassFraction: 0.8, targetDextroseEquivalent: 52, a: '42 DE syrup', aDrySolidsMassFraction: 0.803, aDextroseEquivalent: 42, b: 'dextrose monohydrate', bDrySolidsMassFraction: 0.91, bDextroseEquivalent: 100, aG: 824.49, bG: 151.57, waterG: 23.93 },
    { id: 'powder-to-syrup', targetMassG: 1000, targetDrySolidsMassFraction: 0.8, targetDextroseEquivalent: 42, a: '42 DE powder', aDrySolidsMassFraction: 0.96, aDextroseEquivalent: 42, b: 'water only', bDrySolidsMassFraction: null, bDextroseEquivalent: null, aG: 833.33, bG: null, waterG: 166.67 },
    { id: 'powder-for-syrup', targetMassG: 300, targetDrySolidsMassFraction: 0.803, targetDextroseEquivalent: 42, a: '42 DE powder', aDrySolidsMassFraction: 0.96, aDextroseEquivalent: 42, b: 'water only', bDrySolidsMassFraction: null, bDextroseEquivalent: null, aG: 250.94, bG: null, waterG: 49.06 },
    { id: 'maltodextrin-blend', targetMassG: 1000, targetDrySolidsMassFraction: 0.78, targetDextroseEquivalent: 28, a: '42 DE powder', aDrySolidsMassFraction: 0.96, aDextroseEquivalent: 42, b: 'maltodextrin', bDrySolidsMassFraction: 0.95, bDextroseEquivalent: 10, aG: 457.03, bG: 359.21, waterG: 183.76 },
  ],
  tolerance: {
    text: '0.01 g.',
    limits: [
      { column: 'aG', worst: 0.01 },
      { column: 'bG', worst: 0.01 },
      { column: 'waterG', worst: 0.01 },
    ],
  },
  extra: {
    reducingSugarsOfMix: { sucrosePercentOfSolids: 60, syrupPercentOfSolids: 40, syrupDextroseEquivalent: 42, reducingSugarsPercentOfSolids: 16.8 },
    fullInversion: { sucroseG: 1000, invertG: 1052.63, waterConsumedG: 52.63 },
  },
  notes: [
    'A blend is infeasible when a mass or the added water comes out negative.',
    'Hartel (2012) gives 16 and upward as the usual reducing sugars of hard candy.',
  ],
  check: {
    rows: 4,
    sums: {
      targetMassG: 3300,
      targetDrySolidsMassFraction: 3.183,
      targetDextroseEquivalent: 164,
      aDrySolidsMassFraction: 3.683,
      aDextroseEquivalent: 168,
      bDrySolidsMassFraction: 1.86,
      bDextroseEquivalent: 110,
      aG: 2365.79,
      bG: 510.78,
      waterG: 423.42,
    },
  },
} as const satisfies EvidenceTable;
