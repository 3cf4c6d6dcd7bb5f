// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Legal minimums for starch sugars. */
export const syrupLegalDefinitionsTable = {
  id: 'syrup-legal-definitions',
  title: 'Legal minimums for starch sugars',
  source: {
    authors: 'Codex Alimentarius Commission; European Union',
    year: '1999, last amended 2022',
    title: 'Standard for Sugars CXS 212-1999; Directive 2001/111/EC Annex A',
    locator: 'section 1',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {
    minDextroseEquivalent: '0 to 100',
    minDrySolidsPercent: '% m/m',
    maxSulphatedAshPercentOfDrySolids: '% of dry solids',
    minGlucosePercentOfDrySolids: '% of dry solids',
    dextroseEquivalentBelow: '0 to 100',
    invertAbovePercentOfDrySolids: '% of dry solids',
    maxInvertPercentOfDrySolids: '% of dry solids',
  },
  rows: [
    { product: 'glucose syrup', minDextroseEquivalent: 20, minDrySolidsPercent: 70, maxSulphatedAshPercentOfDrySolids: 1, minGlucosePercentOfDrySolids: null, dextroseEquivalentBelow: null, invertAbovePercentOfDrySolids: null, maxInvertPercentOfDrySolids: null, grade: 'secondary' },
    { product: 'dried glucose syrup', minDextroseEquivalent: 20, minDrySolidsPercent: 93, maxSulphatedAshPercentOfDrySolids: 1, minGlucosePercentOfDrySolids: null, dextroseEquivalentBelow: null, invertAbovePercentOfDrySolids: null, maxInvertPercentOfDrySolids: null, grade: 'secondary' },
    { product: 'dextrose monohydrate', minDextroseEquivalent: null, minDrySolidsPercent: 90, maxSulphatedAshPercentOfDrySolids: null, minGlucosePercentOfDrySolids: 99.5, dextroseEquivalentBelow: null, invertAbovePercentOfDrySolids: null, maxInvertPercentOfDrySolids: null, grade: 'secondary' },
    { product: 'dextrose anhydrous', minDextroseEquivalent: null, minDrySolidsPercent: 98, maxSulphatedAshPercentOfDrySolids: null, minGlucosePercentOfDrySolids: 99.5, dextroseEquivalentBelow: null, invertAbovePercentOfDrySolids: null, maxInvertPercentOfDrySolids: null, grade: 'secondary' },
    { product: 'maltodextrin', minDextroseEquivalent: null, minDrySolidsPercent: null, maxSulphatedAshPercentOfDrySolids: null, minGlucosePercentOfDrySolids: null, dextroseEquivalentBelow: 20, invertAbovePercentOfDrySolids: null, maxInvertPercentOfDrySolids: null, basis: '21 CFR 184.1444', grade: 'secondary' },
    { product: 'invert sugar solution (EU)', minDextroseEquivalent: null, minDrySolidsPercent: 62, maxSulphatedAshPercentOfDrySolids: null, minGlucosePercentOfDrySolids: null, dextroseEquivalentBelow: null, invertAbovePercentOfDrySolids: 3, maxInvertPercentOfDrySolids: 50, fructoseToDextrose: '1.0 +/- 0.1', grade: 'secondary' },
    { product: 'invert sugar syrup (EU)', minDextroseEquivalent: null, minDrySolidsPercent: 62, maxSulphatedAshPercentOfDrySolids: null, minGlucosePercentOfDrySolids: null, dextroseEquivalentBelow: null, invertAbovePercentOfDrySolids: 50, maxInvertPercentOfDrySolids: null, grade: 'memory' },
  ],
  notes: [
    'Seen in the Codex text and in a national food code.',
    'Information only: check the law where the food is sold.',
  ],
  check: {
    rows: 7,
    sums: {
      minDextroseEquivalent: 40,
      minDrySolidsPercent: 475,
      maxSulphatedAshPercentOfDrySolids: 2,
      minGlucosePercentOfDrySolids: 199,
      dextroseEquivalentBelow: 20,
      invertAbovePercentOfDrySolids: 53,
      maxInvertPercentOfDrySolids: 50,
    },
  },
} as const satisfies EvidenceTable;
