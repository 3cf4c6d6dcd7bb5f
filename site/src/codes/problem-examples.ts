import type { ProblemCode } from 'vitrose';
import { BASE_BATCH, POLYOL_BATCH, SHARES_FORMULA } from './base-batch.js';

const base = BASE_BATCH;
const [sugar, syrup, water] = base.formula;
const cook = (target: object): unknown => ({ ...base, cook: target });
const lines = (...formula: readonly unknown[]): unknown => ({ ...base, formula });

/**
 * A document for every problem: what the reader was given, before anything was understood. Each is
 * read and planned when its page is built. One has none: no batch within the limits of the format
 * gets there, and the code is there for the program that asks past them.
 */
export const PROBLEM_EXAMPLES: Readonly<Record<ProblemCode, unknown>> = {
  'not-json':
    '{ "format": "vitrose.batch/1", "formula": [ { "ingredient": "sucrose" "massG": 232 } ] }',
  'too-large': `"${'sugar '.repeat(50_000)}"`,
  'too-deep': nested(14),
  'too-many-lines': lines(...Array.from({ length: 201 }, () => sugar)),
  'hostile-key': `{ "format": "vitrose.batch/1", "__proto__": {} }`,
  'wrong-format': { ...base, format: 'recipe' },
  'newer-format': { ...base, format: 'vitrose.batch/9' },
  missing: { format: base.format, formula: base.formula },
  'wrong-type': lines('sugar', water),
  'unknown-field': { format: base.format, formula: base.formula, cok: { toSeaLevelC: 148 } },
  'unknown-name': lines({ ingredient: 'sukrose', massG: 232 }, syrup, water),
  'one-of': cook({ toSeaLevelC: 148, toStage: 'hard-crack' }),
  'name-taken': {
    ...base,
    ingredients: { sucrose: { kind: 'sugar', drySolidsMassFraction: 1, solids: { sucrose: 1 } } },
  },
  'not-a-number': cook({ toSeaLevelC: Number.NaN }),
  'outside-range': { ...base, kitchen: { elevationM: 15_000 } },
  'not-whole': { ...base, pieces: { count: 60.5 }, mould: { cavityMl: 4 } },
  'perhaps-a-percentage': { ...base, room: { relativeHumidity: 55 } },
  'perhaps-fahrenheit': cook({ toSeaLevelC: 300 }),
  'shares-do-not-sum': {
    ...base,
    formula: [{ ...SHARES_FORMULA[0], shareOfDrySolids: 0.7 }, ...SHARES_FORMULA.slice(1)],
    pieces: { massG: 5, count: 60 },
  },
  'shares-need-a-size': { ...base, formula: SHARES_FORMULA },
  'share-of-nothing': lines(sugar, syrup, {
    ingredient: 'water',
    shareOfIngredient: { ingredient: 'isomalt', share: 0.33 },
  }),
  'circular-share': lines(
    { ingredient: 'sucrose', shareOfIngredient: { ingredient: 'water', share: 2 } },
    { ingredient: 'water', shareOfIngredient: { ingredient: 'sucrose', share: 0.5 } },
  ),
  'only-water': lines(sugar, syrup, {
    ingredient: 'honey',
    makeUpWaterFor: { ingredient: 'dried-glucose-syrup', drySolidsMassFraction: 0.8 },
  }),
  'only-starch-syrup': lines({ ...sugar, dextroseEquivalent: 42 }, syrup, water),
  'no-weight-for-measure': lines(sugar, syrup, water, {
    ingredient: 'tartaric-acid',
    measure: { quantity: 1, unit: 'us-cup', form: 'shaved' },
  }),
  'which-dram': lines(sugar, syrup, water, {
    ingredient: 'flavour-oil',
    measure: { quantity: 1, unit: 'dram' },
    when: 'off-heat',
  }),
  'which-unit': lines(sugar, syrup, water, {
    ingredient: 'citric-acid',
    measure: { quantity: 1, unit: 'teaspoon' },
    when: 'off-heat',
  }),
  'nothing-to-cook': lines(water),
  'no-water': lines(sugar),
  'two-cavity-sizes': { ...base, mould: { cavityMl: 4 }, pieces: { cavityMl: 5, count: 60 } },
  'piece-without-size': { ...base, pieces: { count: 60 } },
  'below-first-boil': cook({ toSeaLevelC: 101 }),
  'already-drier': cook({ toMoistureMassFraction: 0.29 }),
  'off-scale-dry': undefined,
  'vacuum-deeper-than-air': cook({ toSeaLevelC: 148, underVacuumPa: 105_000 }),
  'equal-readings': {
    ...base,
    thermometer: { boilingWaterReadingC: 60, iceWaterReadingC: 14 },
  },
  'readings-disagree': {
    ...base,
    kitchen: { waterBoilsAtC: 95 },
    thermometer: { boilingWaterReadingC: 101 },
  },
  'late-water-exceeds-target': {
    ...base,
    formula: [...base.formula, { ingredient: 'colour-liquid', massG: 20, when: 'off-heat' }],
    cook: { toMoistureMassFraction: 0.01 },
  },
  'beyond-the-knee': { ...POLYOL_BATCH, cook: { toGlassTransitionC: 48 } },
  'glass-point-out-of-reach': cook({ toGlassTransitionC: 110 }),
  'stage-leaves-it-soft': {
    ...POLYOL_BATCH,
    formula: [
      { ingredient: 'isomalt', massG: 300 },
      { ingredient: 'xylitol', massG: 140 },
      { ingredient: 'water', massG: 110 },
    ],
    cook: { toStage: 'soft-crack' },
  },
};

function nested(depth: number): unknown {
  return depth === 0 ? {} : { inside: nested(depth - 1) };
}
