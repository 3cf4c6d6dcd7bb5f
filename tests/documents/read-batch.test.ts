import { describe, expect, it } from 'vitest';
import { readBatch } from 'vitrose/documents';
import { batch, good, lineOf, problemsOf } from './good-batch.js';

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

describe('what is missing or of the wrong kind', () => {
  it.each([
    [{ format: 'vitrose.batch/1' }, ['/formula', '/cook']],
    [lineOf({ massG: 3 }), ['/formula/0/ingredient']],
    [
      lineOf({ ingredient: 'sucrose', measure: {} }),
      ['/formula/0/measure/quantity', '/formula/0/measure/unit'],
    ],
    [batch({ wrap: { film: 'cast-pp' } }), ['/wrap/areaCm2']],
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
