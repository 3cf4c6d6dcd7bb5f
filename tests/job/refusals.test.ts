import { describe, expect, it } from 'vitest';
import { type BatchDocument, type FormulaLine, type ProblemCode, planBatch } from 'vitrose';

const sugar: FormulaLine = { ingredient: 'sucrose', massG: 240 };
const syrup: FormulaLine = { ingredient: 'glucose-syrup', massG: 200 };
const water: FormulaLine = { ingredient: 'water', massG: 80 };
const drops: BatchDocument = {
  format: 'vitrose.batch/1',
  formula: [sugar, syrup, water],
  cook: { toSeaLevelC: 148 },
};
const isomalt: readonly FormulaLine[] = [
  { ingredient: 'isomalt', massG: 500 },
  { ingredient: 'water', massG: 150 },
];

function problemsOf(batch: Partial<BatchDocument>): readonly (readonly [ProblemCode, string])[] {
  const result = planBatch({ ...drops, ...batch });
  return result.kind === 'refused' ? result.problems.map(({ code, path }) => [code, path]) : [];
}

describe('a batch that cannot be is refused with its place', () => {
  it.each<[string, Partial<BatchDocument>, ProblemCode, string]>([
    [
      'no water and no sugar',
      { formula: [{ ingredient: 'flavour-oil', massG: 5 }] },
      'nothing-to-cook',
      '/formula',
    ],
    ['only water', { formula: [water] }, 'nothing-to-cook', '/formula'],
    [
      'a share of solids asked of all but water',
      {
        formula: [
          { ingredient: 'glucose-syrup', drySolidsMassFraction: 5.57e-309, shareOfDrySolids: 1 },
        ],
        pieces: { finishedMassG: 0.000001 },
      },
      'outside-range',
      '/formula/0',
    ],
    [
      'no water but the moisture of cream of tartar',
      {
        formula: [sugar, { ingredient: 'cream-of-tartar', massG: 0.5 }],
        cook: { toSeaLevelC: 151.67 },
      },
      'no-water',
      '/formula',
    ],
    ['no water', { formula: [sugar] }, 'no-water', '/formula'],
    ['a target below the first boil', { cook: { toSeaLevelC: 101 } }, 'below-first-boil', '/cook'],
    [
      'a target below the boil of water',
      { cook: { toSeaLevelC: 100 }, formula: [sugar, { ...water, massG: 9000 }] },
      'below-first-boil',
      '/cook',
    ],
    [
      'more water than the charge has',
      { cook: { toMoistureMassFraction: 0.3 }, formula: [sugar, syrup, { ...water, massG: 10 }] },
      'already-drier',
      '/cook',
    ],
    [
      'a vacuum deeper than the air',
      { cook: { toSeaLevelC: 148, underVacuumPa: 101_000 }, kitchen: { elevationM: 2000 } },
      'vacuum-deeper-than-air',
      '/cook/underVacuumPa',
    ],
    [
      'equal readings',
      { thermometer: { boilingWaterReadingC: 60, iceWaterReadingC: 15 } },
      'equal-readings',
      '/thermometer/boilingWaterReadingC',
    ],
    [
      'a boil no kitchen has',
      { thermometer: { boilingWaterReadingC: 106 } },
      'readings-disagree',
      '/thermometer/boilingWaterReadingC',
    ],
    [
      'two cavity sizes',
      { pieces: { cavityMl: 4 }, mould: { cavityMl: 5 } },
      'two-cavity-sizes',
      '/pieces/cavityMl',
    ],
    ['pieces without a size', { pieces: { count: 20 } }, 'piece-without-size', '/pieces'],
    [
      'shares without a size',
      {
        formula: [
          { ingredient: 'sucrose', shareOfDrySolids: 1 },
          { ingredient: 'water', shareOfIngredient: { ingredient: 'sucrose', share: 0.3 } },
        ],
      },
      'shares-need-a-size',
      '/formula',
    ],
    [
      'shares over one',
      {
        formula: [
          { ingredient: 'sucrose', shareOfDrySolids: 0.7 },
          { ingredient: 'glucose-syrup', shareOfDrySolids: 0.5 },
        ],
      },
      'shares-do-not-sum',
      '/formula',
    ],
    [
      'shares under one with nothing to fill them',
      { formula: [{ ingredient: 'sucrose', shareOfDrySolids: 0.7 }, water] },
      'shares-do-not-sum',
      '/formula',
    ],
    [
      'a share of nothing',
      {
        formula: [
          sugar,
          { ingredient: 'water', shareOfIngredient: { ingredient: 'honey', share: 1 } },
        ],
      },
      'share-of-nothing',
      '/formula/1/shareOfIngredient/ingredient',
    ],
    [
      'shares in a circle',
      {
        formula: [
          { ingredient: 'sucrose', shareOfIngredient: { ingredient: 'water', share: 1 } },
          { ingredient: 'water', shareOfIngredient: { ingredient: 'sucrose', share: 1 } },
        ],
      },
      'circular-share',
      '/formula/0',
    ],
    [
      'make-up water of sugar',
      {
        formula: [
          sugar,
          {
            ingredient: 'glucose-syrup',
            makeUpWaterFor: { ingredient: 'sucrose', drySolidsMassFraction: 0.8 },
          },
        ],
      },
      'only-water',
      '/formula/1/makeUpWaterFor',
    ],
    [
      'a dextrose equivalent of sugar',
      { formula: [{ ...sugar, dextroseEquivalent: 42 }, water] },
      'only-starch-syrup',
      '/formula/0/dextroseEquivalent',
    ],
    [
      'a dextrose equivalent outside its conversion',
      { formula: [sugar, { ...syrup, dextroseEquivalent: 80, conversion: 'acid' }, water] },
      'outside-range',
      '/formula/1/dextroseEquivalent',
    ],
    [
      'a profile that does not sum',
      {
        formula: [
          sugar,
          { ...syrup, profile: { dp1: 0.5, dp2: 0.1, dp3: 0.1, dp4plus: 0.1 } },
          water,
        ],
      },
      'shares-do-not-sum',
      '/formula/1/profile',
    ],
    [
      'a spoon of what has no weight',
      {
        formula: [
          sugar,
          { ingredient: 'aspartame', measure: { quantity: 1, unit: 'us-teaspoon' } },
          water,
        ],
      },
      'no-weight-for-measure',
      '/formula/1/measure',
    ],
    [
      'an unknown ingredient',
      { formula: [{ ingredient: 'moon-dust', massG: 5 }, sugar, water] },
      'unknown-name',
      '/formula/0/ingredient',
    ],
    [
      'shares of an own ingredient that do not sum',
      {
        ingredients: {
          mine: { kind: 'sugar', drySolidsMassFraction: 0.8, solids: { sucrose: 0.5 } },
        },
        formula: [{ ingredient: 'mine', massG: 100 }, water],
      },
      'shares-do-not-sum',
      '/ingredients/mine',
    ],
    [
      'more late water than the sweet may hold',
      {
        cook: { toMoistureMassFraction: 0.01 },
        formula: [
          sugar,
          syrup,
          water,
          { ingredient: 'colour-liquid', massG: 20, when: 'off-heat' },
        ],
      },
      'late-water-exceeds-target',
      '/cook/toMoistureMassFraction',
    ],
    [
      'a glass point no such mass has',
      { formula: isomalt, cook: { toGlassTransitionC: 80 } },
      'glass-point-out-of-reach',
      '/cook/toGlassTransitionC',
    ],
    [
      'a glass point beyond the knee',
      { formula: isomalt, cook: { toGlassTransitionC: 60 } },
      'beyond-the-knee',
      '/cook/toGlassTransitionC',
    ],
    [
      'thread asked of isomalt',
      { formula: isomalt, cook: { toStage: 'thread' } },
      'stage-leaves-it-soft',
      '/cook/toStage',
    ],
    [
      '98 for 0.98',
      { formula: [sugar, { ...syrup, drySolidsMassFraction: 98 }, water] },
      'perhaps-a-percentage',
      '/formula/1/drySolidsMassFraction',
    ],
    [
      '300 that are Fahrenheit',
      { cook: { toSeaLevelC: 300 } },
      'perhaps-fahrenheit',
      '/cook/toSeaLevelC',
    ],
    [
      'a negative mass',
      { formula: [{ ...sugar, massG: -1 }, water] },
      'outside-range',
      '/formula/0/massG',
    ],
    [
      'NaN',
      { formula: [{ ...sugar, massG: Number.NaN }, water] },
      'not-a-number',
      '/formula/0/massG',
    ],
    [
      'infinity',
      { kitchen: { elevationM: Number.POSITIVE_INFINITY } },
      'not-a-number',
      '/kitchen/elevationM',
    ],
  ])('%s', (_, batch, code, path) => {
    expect(problemsOf(batch)).toContainEqual([code, path]);
  });

  it('tells everything that is wrong at once', () => {
    const problems = problemsOf({
      formula: [
        { ...sugar, massG: -1 },
        { ...syrup, drySolidsMassFraction: 98 },
      ],
      kitchen: { elevationM: 99_000 },
    });
    expect(problems.map(([, path]) => path).sort()).toEqual([
      '/formula/0/massG',
      '/formula/1/drySolidsMassFraction',
      '/kitchen/elevationM',
    ]);
  });
});
