// biome-ignore-all format: one printed row a line, to be held against the page

import type { EvidenceTable } from '../../types.js';

/** Claims, reference amounts and rounding. */
export const nutritionLabelRulesTable = {
  id: 'nutrition-label-rules',
  title: 'Claims, reference amounts and rounding',
  source: {
    authors: 'US FDA; EU; FSANZ',
    year: '2024',
    title: '21 CFR 101.9, 101.12, 101.13, 101.60, 101.80, 184.1835, 180.25; Regulation (EU) 1169/2011 Annex III; Regulation (EC) 1924/2006 Annex; Food Standards Code Schedule 11',
    locator: 'as cited',
  },
  grade: 'mixed',
  did: 'Each row has its own grade.',
  units: { value: 'as the row says' },
  constants: {
    euMostSweetenerMgPerKg: { 'acesulfame-k': 500, aspartame: 1000, saccharin: 500, sucralose: 1000, neotame: 32, thaumatin: 50, advantame: 10, 'steviol-glycosides (as steviol equivalents)': 270, 'steviol-glycosides in energy-reduced hard candy': 350 },
    euMostSweetenerGrade: 'memory',
  },
  rows: [
    { rule: 'us-racc-breath-mint', value: 2, meaning: 'g', grade: 'secondary' },
    { rule: 'us-racc-hard-candy-roll-or-mini-dispenser', value: 5, meaning: 'g', grade: 'secondary' },
    { rule: 'us-racc-hard-candy-other', value: 15, meaning: 'g', grade: 'secondary' },
    { rule: 'us-racc-after-dinner-confection', value: 10, meaning: 'g', grade: 'secondary' },
    { rule: 'us-racc-baking-candies', value: 15, meaning: 'g', grade: 'secondary' },
    { rule: 'us-racc-all-other-candies', value: 30, meaning: 'g', grade: 'secondary' },
    { rule: 'us-sugar-free', value: 0.5, meaning: 'g sugars, must be below, per reference amount and per serving', grade: 'secondary' },
    { rule: 'us-sugar-free-needs-low-or-reduced-calorie-or-disclaimer', value: null, meaning: 'sugar-free asks for low or reduced calories, or a disclaimer', grade: 'secondary' },
    { rule: 'us-low-calorie', value: 40, meaning: 'kcal or less per reference amount, and per 50 g when that is 30 g or less', grade: 'secondary' },
    { rule: 'us-calorie-free', value: 5, meaning: 'kcal, must be below', grade: 'secondary' },
    { rule: 'us-reduced', value: 25, meaning: '% less than the reference food', grade: 'secondary' },
    { rule: 'us-round-kcal', value: null, meaning: 'under 5: 0; 5 to 50: nearest 5; above 50: nearest 10', grade: 'secondary' },
    { rule: 'us-round-carb-sugars-polyol', value: null, meaning: 'under 0.5: 0; 0.5 to 1: less than 1 g; from 1: nearest 1', grade: 'secondary' },
    { rule: 'us-dv-added-sugars', value: 50, meaning: 'g', grade: 'secondary' },
    { rule: 'us-dv-total-carbohydrate', value: 275, meaning: 'g', grade: 'secondary' },
    { rule: 'us-laxative-sorbitol', value: 50, meaning: 'g a day foreseeable, asks for a statement', grade: 'secondary' },
    { rule: 'us-laxative-mannitol', value: 20, meaning: 'g a day foreseeable, asks for a statement', grade: 'secondary' },
    { rule: 'us-max-sorbitol-hard-candy', value: 99, meaning: '%', grade: 'secondary' },
    { rule: 'us-max-mannitol-hard-candy', value: 5, meaning: '%; 98 in pressed mints', grade: 'secondary' },
    { rule: 'eu-laxative-statement', value: 10, meaning: '% added polyols, statement when above', grade: 'secondary' },
    { rule: 'eu-with-sweeteners', value: null, meaning: 'a statement beside the name when any sweetener, polyols included, is used', grade: 'secondary' },
    { rule: 'eu-aspartame', value: null, meaning: 'names aspartame as a source of phenylalanine', grade: 'secondary' },
    { rule: 'eu-liquorice', value: 100, meaning: 'mg/kg glycyrrhizinic acid', grade: 'secondary' },
    { rule: 'eu-sugars-free', value: 0.5, meaning: 'g sugars per 100 g, not above', grade: 'secondary' },
    { rule: 'eu-low-sugars', value: 5, meaning: 'g per 100 g, not above', grade: 'secondary' },
    { rule: 'eu-low-energy', value: 40, meaning: 'kcal per 100 g, not above', grade: 'secondary' },
    { rule: 'eu-energy-reduced', value: 30, meaning: '% less', grade: 'secondary' },
    { rule: 'eu-reduced-sugars', value: 30, meaning: '% less, and no more energy', grade: 'memory' },
    { rule: 'eu-round-energy', value: null, meaning: 'nearest 1 kcal and 1 kJ', grade: 'memory' },
    { rule: 'eu-round-carb-sugars-polyol', value: null, meaning: 'from 10: nearest 1; 0.5 to 10: nearest 0.1; to 0.5: 0 or under 0.5', grade: 'memory' },
    { rule: 'anz-kcal-from-kj', value: 4.18, meaning: 'kJ per kcal', grade: 'primary' },
    { rule: 'anz-declare-each-polyol', value: 5, meaning: 'g per 100 g: from here each is declared by name', grade: 'primary' },
  ],
  tolerance: {
    text: 'The limit a rule prints is the limit that is tested.',
    limits: [{ column: 'value', worst: 1e-9 }],
  },
  notes: [
    'For estimating a label, never legal advice: check the law where the food is sold.',
    'The reference amount of other hard candy stands in Federal Register 63:1078 (1998) as a proposal to widen it.',
  ],
  check: {
    rows: 32,
    sums: {
      value: 871.18,
    },
  },
} as const satisfies EvidenceTable;
