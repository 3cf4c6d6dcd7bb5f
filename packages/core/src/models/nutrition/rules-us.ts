// biome-ignore-all format: one rule a line, to be held against the law

import type { Cited, CitedConstants } from '../../foundation/validity/constants.js';
import { KJ_PER_KCAL, US_KCAL_PER_G } from './energy-factors.js';
import type { NutritionRules, RoundingRule } from './types.js';

const claims = 'us-21-cfr-101-60', amounts = 'us-21-cfr-101-12', label = 'us-21-cfr-101-9';
const sorbitol = 'us-21-cfr-184-1835', mannitol = 'us-21-cfr-180-25', recalled = 'recalled-nutrition';
const grade = 'secondary', memory = 'memory';

const gramSteps = [
  { to: 0.5, inclusive: false, as: 'zero', step: 0 },
  { to: 1, inclusive: false, as: 'less-than', step: 1 },
  { to: Infinity, inclusive: true, as: 'nearest', step: 1 },
] as const satisfies RoundingRule['steps'];
const grams = { source: label, grade, locator: '(c)(6)', steps: gramSteps } as const satisfies RoundingRule;
const hardCandyG = { value: 15, source: amounts, grade, note: 'a proposal of 1998 widens this row: see the current table' } as const satisfies Cited;

/** Reference amounts of the United States, g: what a person is taken to eat at once. */
export const US_REFERENCE_AMOUNTS_G = {
  'breath-mints': { value: 2, source: amounts, grade },
  'hard-candy-in-rolls': { value: 5, source: amounts, grade, note: 'and mini-size in dispensers' },
  'hard-candy': hardCandyG,
  'after-dinner-sweets': { value: 10, source: amounts, grade },
  'baking-candies': { value: 15, source: amounts, grade },
  'other-candies': { value: 30, source: amounts, grade },
} as const satisfies CitedConstants;

/** United States. */
export const US_RULES = {
  kcalPerG: US_KCAL_PER_G,
  kJ: { perKcal: KJ_PER_KCAL },
  // By difference: all that is not water, protein, fat or ash.
  carbohydrateHolds: ['sugar', 'carbohydrate', 'polyol', 'fibre', 'organic-acid'],
  countsAs: { allulose: 'carbohydrate', glycerol: 'carbohydrate' },
  referenceG: hardCandyG,
  smallReferenceG: { value: 30, source: claims, grade, locator: '(b)(2)' },
  claims: [
    { id: 'sugar-free', conditions: [
      { quantity: 'sugarsG', per: 'reference', passes: 'below', limit: { value: 0.5, source: claims, grade, locator: '(c)(1)' } },
      { quantity: 'sugarsG', per: 'serving', passes: 'below', limit: { value: 0.5, source: claims, grade, locator: '(c)(1)' } },
    ] },
    { id: 'reduced-sugars', conditions: [
      { quantity: 'sugarsSavedShare', per: 'reference', passes: 'at-least', limit: { value: 0.25, source: claims, grade, locator: '(c)(5)' } },
    ] },
    { id: 'calorie-free', conditions: [
      { quantity: 'energyKcal', per: 'reference', passes: 'below', limit: { value: 5, source: claims, grade, locator: '(b)(1)' } },
      { quantity: 'energyKcal', per: 'serving', passes: 'below', limit: { value: 5, source: claims, grade, locator: '(b)(1)' } },
    ] },
    { id: 'low-energy', conditions: [
      { quantity: 'energyKcal', per: 'reference', passes: 'at-most', limit: { value: 40, source: claims, grade, locator: '(b)(2)' } },
      { quantity: 'energyKcal', per: '50G', passes: 'at-most', limit: { value: 40, source: claims, grade, locator: '(b)(2)' } },
    ] },
    { id: 'reduced-energy', conditions: [
      { quantity: 'energySavedShare', per: 'reference', passes: 'at-least', limit: { value: 0.25, source: claims, grade, locator: '(b)(4)' } },
    ] },
  ],
  statements: [
    { asks: 'sugar-free-not-reduced', rule: { source: claims, grade, locator: '(c)(1)' } },
    { asks: 'eaten-in-a-day', species: 'sorbitol', limitG: { value: 50, source: sorbitol, grade } },
    { asks: 'eaten-in-a-day', species: 'mannitol', limitG: { value: 20, source: mannitol, grade } },
    { asks: 'aspartame', rule: { source: recalled, grade: memory } },
  ],
  doses: [
    { species: 'sorbitol', limitMassFraction: { value: 0.99, source: sorbitol, grade } },
    { species: 'mannitol', limitMassFraction: { value: 0.05, source: mannitol, grade, note: '0.98 in pressed mints' } },
  ],
  rounding: {
    energyKcal: {
      source: label, grade, locator: '(c)(1)',
      steps: [
        { to: 5, inclusive: false, as: 'zero', step: 0 },
        { to: 50, inclusive: true, as: 'nearest', step: 5 },
        { to: Infinity, inclusive: true, as: 'nearest', step: 10 },
      ],
    },
    carbohydrateG: grams,
    sugarsG: grams,
    addedSugarsG: { source: recalled, grade: memory, steps: gramSteps },
    polyolsG: grams,
    fibreG: { source: recalled, grade: memory, steps: gramSteps },
    proteinG: { source: recalled, grade: memory, steps: gramSteps },
    fatG: {
      source: recalled, grade: memory,
      steps: [
        { to: 0.5, inclusive: false, as: 'zero', step: 0 },
        { to: 5, inclusive: false, as: 'nearest', step: 0.5 },
        { to: Infinity, inclusive: true, as: 'nearest', step: 1 },
      ],
    },
  },
} as const satisfies NutritionRules;
