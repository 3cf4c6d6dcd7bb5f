// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Doses of acid, flavour and colour in boiled sweets. */
export const nutritionAcidsFlavourColourTable = {
  id: 'nutrition-acids-flavour-colour',
  title: 'Doses of acid, flavour and colour in boiled sweets',
  source: {
    authors: 'several',
    year: 'n.d.',
    title: 'Bench reports and recipes',
    locator: 'see rows',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: {
    doseLowPercent: '% of the finished sweet',
    doseTypicalPercent: '% of the finished sweet',
    doseHighPercent: '% of the finished sweet',
    equalSournessMass: 'g as sour as 1 g of anhydrous citric acid',
    equalTitratableMass: 'g with as much acid as 1 g of anhydrous citric acid',
  },
  rows: [
    { kind: 'acid', id: 'citric-anhydrous', doseLowPercent: 0.5, doseTypicalPercent: 1, doseHighPercent: 2, equalSournessMass: 1, equalTitratableMass: 1, grade: 'practice' },
    { kind: 'acid', id: 'citric-monohydrate', doseLowPercent: 0.55, doseTypicalPercent: 1.1, doseHighPercent: 2.2, equalSournessMass: 1.09, equalTitratableMass: 1.094, grade: 'derived' },
    { kind: 'acid', id: 'malic', doseLowPercent: 0.4, doseTypicalPercent: 0.9, doseHighPercent: 1.8, equalSournessMass: 0.85, equalTitratableMass: 1.047, grade: 'memory' },
    { kind: 'acid', id: 'tartaric', doseLowPercent: 0.4, doseTypicalPercent: 0.9, doseHighPercent: 1.8, equalSournessMass: 0.9, equalTitratableMass: 1.172, grade: 'memory' },
    { kind: 'acid', id: 'lactic-88', doseLowPercent: 0.6, doseTypicalPercent: 1.4, doseHighPercent: 2.5, equalSournessMass: 1.35, equalTitratableMass: 1.598, note: 'A buffered grade is used to spare inversion.', grade: 'memory' },
    { kind: 'acid', id: 'fumaric', doseLowPercent: 0.3, doseTypicalPercent: 0.7, doseHighPercent: 1.3, equalSournessMass: 0.65, equalTitratableMass: 0.906, note: 'Poorly soluble.', grade: 'memory' },
    { kind: 'acid', id: 'kitchen-start', doseLowPercent: null, doseTypicalPercent: null, doseHighPercent: null, equalSournessMass: null, equalTitratableMass: null, note: '1/8 teaspoon of citric acid per 2 cups of sugar, after the cook, below 129 °C', grade: 'secondary' },
    { kind: 'flavour', id: 'peppermint-or-cassia-oil', doseLowPercent: 0.1, doseTypicalPercent: 0.15, doseHighPercent: 0.25, equalSournessMass: null, equalTitratableMass: null, note: '1/4 teaspoon, about 1.1 g, in 680 g', grade: 'derived' },
    { kind: 'flavour', id: 'citrus-oil', doseLowPercent: 0.15, doseTypicalPercent: 0.3, doseHighPercent: 0.4, equalSournessMass: null, equalTitratableMass: null, note: '1/2 teaspoon, about 2.1 g, in 680 g', grade: 'derived' },
    { kind: 'flavour', id: 'anise-oil', doseLowPercent: 0.05, doseTypicalPercent: 0.09, doseHighPercent: 0.15, equalSournessMass: null, equalTitratableMass: null, note: '1/8 teaspoon in 680 g', grade: 'derived' },
    { kind: 'flavour', id: 'compounded-flavour', doseLowPercent: 0.2, doseTypicalPercent: 0.4, doseHighPercent: 0.6, equalSournessMass: null, equalTitratableMass: null, note: '1 US fluid dram, about 3.5 g, in 600 g', grade: 'practice' },
    { kind: 'colour', id: 'water-soluble-dye', doseLowPercent: 0.003, doseTypicalPercent: 0.01, doseHighPercent: 0.03, equalSournessMass: null, equalTitratableMass: null, note: '30 to 300 mg/kg of pure dye; many legal caps lie inside', grade: 'practice' },
  ],
  notes: [
    'Sourness depends on pH, sweetness and saliva: ± 15 % on the factors.',
    'Strong oils are dosed by mass, never in drops or spoons: some poison a child in a teaspoon.',
  ],
  check: {
    rows: 12,
    sums: {
      doseLowPercent: 3.253,
      doseTypicalPercent: 6.95,
      doseHighPercent: 13.03,
      equalSournessMass: 5.84,
      equalTitratableMass: 6.817,
    },
  },
} as const satisfies EvidenceTable;
