import { describe, expect, it } from 'vitest';
import type { Problem } from 'vitrose';
import { readBatch } from 'vitrose/documents';

const good = {
  format: 'vitrose.batch/1',
  formula: [
    { ingredient: 'sucrose', massG: 232 },
    { ingredient: 'water', massG: 116 },
  ],
  cook: { toSeaLevelC: 148 },
};

const problemsOf = (input: unknown): readonly Problem[] => {
  const reading = readBatch(input);
  return reading.kind === 'problems' ? reading.problems : [];
};

/** The good batch with some of its fields replaced. */
const batch = (fields: object): object => ({ ...good, ...fields });
/** The good batch with another first line. */
const lineOf = (line: unknown): object => batch({ formula: [line, good.formula[1]] });

describe('a batch that is right', () => {
  it.each([
    ['as a value', good],
    ['as a text', JSON.stringify(good)],
    ['as a text that begins with the mark some editors leave', `\uFEFF${JSON.stringify(good)}`],
    ['with fields that are there but undefined', batch({ kitchen: undefined, name: undefined })],
  ])('is read %s', (_, input) => {
    expect(readBatch(input)).toStrictEqual({ kind: 'batch', batch: good });
  });

  it('is a copy, so that nobody changes what was read', () => {
    const reading = readBatch(good);
    expect(reading.kind === 'batch' && reading.batch).not.toBe(good);
    expect(reading.kind === 'batch' && reading.batch.formula).not.toBe(good.formula);
  });

  it.each([
    { elevationM: 1_500 },
    { pressurePa: 84_000 },
    { seaLevelPressurePa: 101_000, elevationM: 1_500 },
    { waterBoilsAtC: 95.1 },
  ])('knows the kitchen by %j', (kitchen) => {
    expect(problemsOf(batch({ kitchen }))).toEqual([]);
  });
});

describe('text that is not JSON', () => {
  it('is shown by line and column', () => {
    const text = '{\n  "format": "vitrose.batch/1",\n  "formula": [,]\n}';
    expect(problemsOf(text)).toEqual([
      { code: 'not-json', path: '', numbers: { line: 3, column: 15 } },
    ]);
  });

  it.each(['', '   ', '{', 'massG = 3', '[1,', '{"a":NaN}', "{'a':1}"])(
    'is refused: %j',
    (text) => {
      expect(problemsOf(text)).toMatchObject([{ code: 'not-json' }]);
    },
  );

  it.each(['null', '3', '"sugar"', '[]', 'true'])(
    'is told from JSON that is no document: %s',
    (text) => {
      expect(problemsOf(text)).toMatchObject([{ code: 'wrong-type', path: '', known: ['object'] }]);
    },
  );
});

describe('the format', () => {
  const wanted = { path: '/format', known: ['vitrose.batch/1'] };
  const { format, ...without } = good;

  it.each([
    ['missing', without, undefined],
    ['of another document', batch({ format: 'vitrose.kitchen/1' }), 'vitrose.kitchen/1'],
    ['of no document', batch({ format: 'vitrose.batch' }), 'vitrose.batch'],
    ['number nought', batch({ format: 'vitrose.batch/0' }), 'vitrose.batch/0'],
    ['not a name', batch({ format: 1 }), 1],
  ])('is refused when it is %s', (_, input, received) => {
    expect(problemsOf(input)).toEqual([{ code: 'wrong-format', ...wanted, received }]);
  });

  it.each(['vitrose.batch/2', 'vitrose.batch/17'])(
    '%s is of a newer version, and nothing else is said',
    (newer) => {
      expect(problemsOf(batch({ format: newer, ferment: true, cook: 3 }))).toEqual([
        { code: 'newer-format', ...wanted, received: newer },
      ]);
    },
  );
});

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
      { path: '/ingredients/sucrose', received: 'sucrose', known: ['sucrose'] },
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

describe('one way and no other', () => {
  const amounts = [
    'massG',
    'measure',
    'shareOfDrySolids',
    'shareOfFinished',
    'shareOfIngredient',
    'makeUpWaterFor',
  ];

  it.each([
    ['no amount', { ingredient: 'sucrose' }, []],
    [
      'two amounts',
      { ingredient: 'sucrose', massG: 1, shareOfFinished: 0.1 },
      ['massG', 'shareOfFinished'],
    ],
  ])('to say how much: %s', (_, line, received) => {
    expect(problemsOf(lineOf(line))).toEqual([
      { code: 'one-of', path: '/formula/0', received, known: amounts },
    ]);
  });

  it.each([
    ['no target', {}, []],
    ['two targets', { toSeaLevelC: 148, toStage: 'hard-crack' }, ['toStage', 'toSeaLevelC']],
  ])('to say where to stop: %s', (_, cook, received) => {
    expect(problemsOf(batch({ cook }))).toMatchObject([
      { code: 'one-of', path: '/cook', received },
    ]);
  });

  it('to know the air pressure', () => {
    const twice = { pressurePa: 90_000, elevationM: 100 };
    const known = ['elevationM', 'pressurePa', 'seaLevelPressurePa', 'waterBoilsAtC'];
    expect(problemsOf(batch({ kitchen: twice }))).toEqual([
      { code: 'one-of', path: '/kitchen', received: ['elevationM', 'pressurePa'], known },
    ]);
    expect(problemsOf(batch({ kitchen: { seaLevelPressurePa: 101_325 } }))).toEqual([
      { code: 'missing', path: '/kitchen/elevationM' },
    ]);
  });

  it('to describe a hob', () => {
    expect(problemsOf(batch({ hob: { powerW: 900 } }))).toEqual([
      { code: 'missing', path: '/hob/kind', known: ['gas', 'resistance', 'induction', 'timed'] },
    ]);
    expect(problemsOf(batch({ hob: { kind: 'gas', powerW: 900, waterG: 500 } }))).toEqual([
      {
        code: 'unknown-field',
        path: '/hob/waterG',
        received: 'waterG',
        known: ['kind', 'powerW'],
        also: '/hob/kind',
      },
    ]);
  });

  it('lets no field stand beside a target it does not belong to', () => {
    expect(problemsOf(batch({ cook: { toSeaLevelC: 148, aim: 'low' } }))).toMatchObject([
      { code: 'unknown-field', path: '/cook/aim', also: '/cook/toSeaLevelC' },
    ]);
  });
});

describe('what is missing or of the wrong kind', () => {
  it.each([
    [{ format: 'vitrose.batch/1' }, ['/formula', '/cook']],
    [lineOf({ massG: 3 }), ['/formula/0/ingredient']],
    [
      lineOf({ ingredient: 'sucrose', measure: {} }),
      ['/formula/0/measure/quantity', '/formula/0/measure/unit'],
    ],
    [batch({ wrap: { film: 'thin' } }), ['/wrap/areaCm2']],
  ])('is missed by its place', (input, paths) => {
    expect(problemsOf(input)).toMatchObject(paths.map((path) => ({ code: 'missing', path })));
  });

  it.each([
    [batch({ formula: 'sugar' }), '/formula', 'sugar', ['array']],
    [batch({ formula: null }), '/formula', null, ['array']],
    [lineOf(7), '/formula/0', 7, ['object']],
    [batch({ cook: [148] }), '/cook', [], ['object']],
    [batch({ name: 12 }), '/name', 12, ['string']],
    [
      batch({ handling: { stirredAfterBoil: 'no' } }),
      '/handling/stirredAfterBoil',
      'no',
      ['boolean'],
    ],
    [batch({ wrap: 3 }), '/wrap', 3, ['none', 'twist', 'object']],
    [batch({ ingredients: [] }), '/ingredients', [], ['object']],
    [batch({ kitchen: null }), '/kitchen', null, ['object']],
    [batch({ note: ['x'.repeat(900)] }), '/note', [], ['string']],
  ])('is named with what would be right', (input, path, received, known) => {
    expect(problemsOf(input)).toEqual([{ code: 'wrong-type', path, received, known }]);
  });

  it('is told all at once', () => {
    const input = batch({
      formula: [{ ingredient: 'sugar', massG: -1 }, { ingredient: 'water' }, null],
      cook: { toSeaLevelC: 300 },
      room: { relativeHumidity: 55 },
      spoon: 'big',
    });
    expect(
      problemsOf(input)
        .map(({ code, path }) => `${code} ${path}`)
        .sort(),
    ).toEqual([
      'one-of /formula/1',
      'outside-range /formula/0/massG',
      'perhaps-a-percentage /room/relativeHumidity',
      'perhaps-fahrenheit /cook/toSeaLevelC',
      'unknown-field /spoon',
      'unknown-name /formula/0/ingredient',
      'wrong-type /formula/2',
    ]);
  });
});
