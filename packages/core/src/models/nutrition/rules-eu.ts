// biome-ignore-all format: one rule a line, to be held against the law

import { EU_KCAL_PER_G, EU_KJ_PER_G } from './energy-factors.js';
import type { NutritionRules, RoundingRule } from './types.js';

const claims = 'eu-1924-2006-annex', statements = 'eu-1169-2011-annex-3', guidance = 'eu-guidance-2012';
const recalled = 'recalled-nutrition', unsugared = 'confectionery with no added sugar';
const grade = 'secondary', memory = 'memory';

const energy = {
  source: guidance, grade: memory,
  steps: [{ to: Infinity, inclusive: true, as: 'nearest', step: 1 }],
} as const satisfies RoundingRule;

const grams = {
  source: guidance, grade: memory,
  steps: [
    { to: 0.5, inclusive: true, as: 'less-than', step: 0.5 },
    { to: 10, inclusive: false, as: 'nearest', step: 0.1 },
    { to: Infinity, inclusive: true, as: 'nearest', step: 1 },
  ],
} as const satisfies RoundingRule;

/** European Union. */
export const EU_RULES = {
  kcalPerG: EU_KCAL_PER_G,
  kJ: { perG: EU_KJ_PER_G },
  carbohydrateHolds: ['sugar', 'carbohydrate', 'polyol'],
  countsAs: {},
  // Claims are by the hundred grams: no portion to fall back on, none that is small.
  referenceG: { value: 100, source: 'definition', grade: 'derived' },
  smallReferenceG: { value: 0, source: 'definition', grade: 'derived' },
  claims: [
    { id: 'sugar-free', conditions: [
      { quantity: 'sugarsG', per: '100G', passes: 'at-most', limit: { value: 0.5, source: claims, grade } },
    ] },
    { id: 'low-sugars', conditions: [
      { quantity: 'sugarsG', per: '100G', passes: 'at-most', limit: { value: 5, source: claims, grade } },
    ] },
    { id: 'no-added-sugars', conditions: [
      { quantity: 'sweeteningG', per: '100G', passes: 'at-most', limit: { value: 0, source: claims, grade } },
    ] },
    { id: 'reduced-sugars', conditions: [
      { quantity: 'sugarsSavedShare', per: '100G', passes: 'at-least', limit: { value: 0.3, source: claims, grade: memory } },
      { quantity: 'energySavedShare', per: '100G', passes: 'at-least', limit: { value: 0, source: claims, grade: memory } },
    ] },
    { id: 'low-energy', conditions: [
      { quantity: 'energyKcal', per: '100G', passes: 'at-most', limit: { value: 40, source: claims, grade } },
    ] },
    { id: 'reduced-energy', conditions: [
      { quantity: 'energySavedShare', per: '100G', passes: 'at-least', limit: { value: 0.3, source: claims, grade } },
    ] },
  ],
  statements: [
    { asks: 'sweeteners', rule: { source: statements, grade } },
    { asks: 'polyols-above', limitMassFraction: { value: 0.1, source: statements, grade } },
    { asks: 'aspartame', rule: { source: statements, grade } },
  ],
  doses: [
    { species: 'acesulfame-k', limitMassFraction: { value: 0.0005, source: recalled, grade: memory, note: unsugared } },
    { species: 'aspartame', limitMassFraction: { value: 0.001, source: recalled, grade: memory, note: unsugared } },
    { species: 'saccharin', limitMassFraction: { value: 0.0005, source: recalled, grade: memory, note: unsugared } },
    { species: 'sucralose', limitMassFraction: { value: 0.001, source: recalled, grade: memory, note: unsugared } },
  ],
  rounding: {
    energyKcal: energy,
    energyKJ: energy,
    carbohydrateG: grams,
    sugarsG: grams,
    polyolsG: grams,
    fibreG: grams,
    proteinG: grams,
    fatG: grams,
    saltG: {
      source: guidance, grade: memory,
      steps: [
        { to: 0.0125, inclusive: true, as: 'less-than', step: 0.01 },
        { to: 1, inclusive: false, as: 'nearest', step: 0.01 },
        { to: Infinity, inclusive: true, as: 'nearest', step: 0.1 },
      ],
    },
  },
} as const satisfies NutritionRules;
