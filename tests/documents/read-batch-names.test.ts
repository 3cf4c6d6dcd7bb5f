import { describe, expect, it } from 'vitest';
import { readBatch } from 'vitrose/documents';
import { batch, good, lineOf, problemsOf } from './good-batch.js';

describe('names', () => {
  it.each([
    [batch({ kichen: { elevationM: 10 } }), '/kichen', ['kitchen']],
    [batch({ mold: {} }), '/mold', ['mould']],
    [lineOf({ ingredient: 'sucrose', mass: 232 }), '/formula/0/mass', ['massG']],
    [batch({ cook: { toSealevelC: 148 } }), '/cook/toSealevelC', ['toSeaLevelC']],
    [batch({ thermometer: { kind: 'dial', maxF: 400 } }), '/thermometer/maxF', ['maxC']],
  ])('of fields are guessed, one slip one problem', (input, path, known) => {
    const received = path.slice(path.lastIndexOf('/') + 1);
    expect(problemsOf(input)).toEqual([{ code: 'unknown-field', path, received, known }]);
  });

  it('of fields nobody knows are refused without a guess', () => {
    expect(problemsOf(batch({ 'a/b~c': 1 }))).toEqual([
      { code: 'unknown-field', path: '/a~1b~0c', received: 'a/b~c' },
    ]);
  });

  it.each([
    ['sucrse', ['sucrose']],
    ['Sucrose', ['sucrose']],
    ['sugar', ['sucrose']],
    ['Granulated Sugar', ['sucrose']],
    ['granulated-suger', ['sucrose']],
    ['light corn syrup', ['glucose-syrup']],
    ["confectioner's glucose", ['glucose-syrup']],
    ['glucose powder', ['dried-glucose-syrup', 'dextrose-monohydrate']],
    ['birch sugar', ['xylitol']],
    ['vanilla_extract', ['flavour-alcohol']],
    ['cream of tartar', ['cream-of-tartar']],
  ])('of ingredients are guessed by shop and by spelling: %s', (ingredient, known) => {
    expect(problemsOf(lineOf({ ingredient, massG: 100 }))).toEqual([
      { code: 'unknown-name', path: '/formula/0/ingredient', received: ingredient, known },
    ]);
  });

  it.each(['unobtainium', 'toString', '', 'hasOwnProperty'])(
    'of no ingredient get no guess: %j',
    (ingredient) => {
      expect(problemsOf(lineOf({ ingredient, massG: 100 }))).toEqual([
        { code: 'unknown-name', path: '/formula/0/ingredient', received: ingredient },
      ]);
    },
  );

  it('of ingredients are also looked up where a line points to another', () => {
    const formula = [
      good.formula[0],
      { ingredient: 'water', shareOfIngredient: { ingredient: 'sucros', share: 0.33 } },
      { ingredient: 'water', makeUpWaterFor: { ingredient: 'syrop', drySolidsMassFraction: 0.8 } },
    ];
    expect(problemsOf(batch({ formula })).map(({ path }) => path)).toEqual([
      '/formula/1/shareOfIngredient/ingredient',
      '/formula/2/makeUpWaterFor/ingredient',
    ]);
  });

  it("of one's own are known, and guessed", () => {
    const ingredients = { 'my-syrup': { kind: 'sugar', drySolidsMassFraction: 0.8 } };
    const own = (ingredient: string) => ({ ...lineOf({ ingredient, massG: 10 }), ingredients });
    expect(problemsOf(own('my-syrup'))).toEqual([]);
    expect(problemsOf(own('my-sirup'))).toMatchObject([
      { code: 'unknown-name', known: ['my-syrup'] },
    ]);
  });

  it("of one's own do not hide an ingredient of the library", () => {
    const ingredients = { sucrose: { kind: 'sugar', drySolidsMassFraction: 1 } };
    expect(problemsOf(batch({ ingredients }))).toMatchObject([
      { path: '/ingredients/sucrose', received: 'sucrose', code: 'name-taken' },
    ]);
  });

  it('can be guessed by another list of shop names', () => {
    const reading = readBatch(lineOf({ ingredient: 'Zucker', massG: 9 }), {
      shopNames: { zucker: ['sucrose'] },
    });
    expect(reading).toMatchObject({ problems: [{ known: ['sucrose'] }] });
  });

  it.each([
    [{ cook: { toStage: 'hard-crak' } }, '/cook/toStage', ['hard-crack']],
    [{ wrap: 'twisted' }, '/wrap', ['twist']],
    [{ hob: { kind: 'time', powerW: 1_000 } }, '/hob/kind', ['timed']],
    [
      { hob: { kind: 'fire', powerW: 1_000 } },
      '/hob/kind',
      ['gas', 'resistance', 'induction', 'timed'],
    ],
    [
      { ingredients: { a: { kind: 'sugar', drySolidsMassFraction: 1, solids: { sucros: 1 } } } },
      '/ingredients/a/solids/sucros',
      ['sucrose'],
    ],
  ])('from a list are guessed, or listed: %j', (fields, path, known) => {
    expect(problemsOf(batch(fields))).toMatchObject([{ code: 'unknown-name', path, known }]);
  });
});

describe('units of measure', () => {
  it.each([
    ['dram', 'which-dram', ['us-fluid-dram', 'oz']],
    ['Drams', 'which-dram', ['us-fluid-dram', 'oz']],
    ['cup', 'which-unit', ['us-cup', 'metric-cup']],
    ['cups', 'which-unit', ['us-cup', 'metric-cup']],
    ['tbsp.', 'which-unit', ['us-tablespoon', 'metric-tablespoon', 'au-tablespoon']],
    ['tablespoon', 'which-unit', ['us-tablespoon', 'metric-tablespoon', 'au-tablespoon']],
    ['teaspoons', 'which-unit', ['us-teaspoon', 'metric-teaspoon']],
    ['tsp', 'which-unit', ['us-teaspoon', 'metric-teaspoon']],
    ['fl oz', 'unknown-name', ['us-fluid-ounce']],
    ['ounces', 'unknown-name', ['oz']],
    ['lbs', 'unknown-name', ['lb']],
    ['grams', 'unknown-name', ['massG']],
    ['us-cups', 'unknown-name', ['us-cup']],
  ])('%s asks what is meant', (unit, code, known) => {
    expect(
      problemsOf(lineOf({ ingredient: 'sucrose', measure: { quantity: 1, unit } })),
    ).toMatchObject([{ code, path: '/formula/0/measure/unit', received: unit, known }]);
  });
});
