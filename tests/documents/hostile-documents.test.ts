import { describe, expect, it } from 'vitest';
import { DOCUMENT_CAPS, readBatch, readKitchen } from 'vitrose/documents';

const good = {
  format: 'vitrose.batch/1',
  formula: [{ ingredient: 'sucrose', massG: 200 }],
  cook: { toSeaLevelC: 148 },
};
const codes = (input: unknown): readonly string[] => {
  const reading = readBatch(input);
  return reading.kind === 'problems' ? [...new Set(reading.problems.map(({ code }) => code))] : [];
};

/** `depth` objects, one in another. */
const nested = (depth: number): unknown =>
  Array.from({ length: depth - 1 }).reduce<object>((inner) => ({ a: inner }), {});

describe('documents that are too much', () => {
  const note = (bytes: number): string => {
    const empty = JSON.stringify({ ...good, note: '' }).length;
    return JSON.stringify({ ...good, note: 'x'.repeat(bytes - empty) });
  };

  it('are read up to the cap and refused one byte beyond', () => {
    expect(readBatch(note(DOCUMENT_CAPS.bytes)).kind).toBe('batch');
    expect(codes(note(DOCUMENT_CAPS.bytes + 1))).toEqual(['too-large']);
  });

  it('are measured in bytes, not in signs', () => {
    const note = '糖'.repeat(90_000);
    expect(codes(JSON.stringify({ ...good, note }))).toEqual(['too-large']);
  });

  it('are weighed when they are no text', () => {
    expect(codes({ ...good, note: 'x'.repeat(DOCUMENT_CAPS.bytes) })).toEqual(['too-large']);
    expect(codes(new Array(1e9))).toEqual(['too-large']);
  });

  it('are refused for a formula of ten thousand lines, and of a few too many', () => {
    const formula = (lines: number) => Array.from({ length: lines }, () => good.formula[0]);
    expect(codes({ ...good, formula: formula(DOCUMENT_CAPS.lines) })).toEqual([]);
    expect(readBatch({ ...good, formula: formula(DOCUMENT_CAPS.lines + 1) })).toMatchObject({
      problems: [{ code: 'too-many-lines', path: '/formula', received: 201, limits: [0, 200] }],
    });
    expect(codes({ ...good, formula: formula(1e5) })).toEqual(['too-large']);
    expect(codes(JSON.stringify({ ...good, formula: formula(1e5) }))).toEqual(['too-large']);
    // Short lines stay under the size cap and meet the other one.
    expect(codes({ ...good, formula: Array(1e5).fill(0) })).toEqual(['too-many-lines']);
  });

  it('are refused when they nest too deep', () => {
    expect(codes({ ...good, x: nested(11) })).toEqual(['unknown-field']);
    expect(codes({ ...good, x: nested(12) })).toEqual(['too-deep']);
    expect(codes(JSON.stringify({ ...good, x: nested(11) }))).toEqual(['unknown-field']);
    expect(codes(JSON.stringify({ ...good, x: nested(12) }))).toEqual(['too-deep']);
  });

  it('are refused at once when they are a bomb', () => {
    expect(codes('['.repeat(200_000))).toEqual(['too-deep']);
    expect(codes('{"a":'.repeat(50_000))).toEqual(['too-deep']);
    expect(codes(nested(100_000))).toEqual(['too-deep']);
    const ring: Record<string, unknown> = { ...good };
    ring.self = ring;
    expect(codes(ring)).toEqual(['too-deep']);
    // Ten references to one list, ten times over: a handful of objects, a billion places.
    const fan = Array.from({ length: 9 }).reduce<unknown>((inner) => Array(10).fill(inner), 0);
    expect(codes({ ...good, fan })).toEqual(['too-large']);
  });
});

describe('keys that reach into prototypes', () => {
  it.each(['__proto__', 'constructor', 'prototype'])('are refused in a text: %s', (key) => {
    const text = JSON.stringify(good).replace('"massG"', `"${key}":{"polluted":true},"massG"`);
    expect(readBatch(text)).toEqual({
      kind: 'problems',
      problems: [{ code: 'hostile-key', path: `/formula/0/${key}`, received: key }],
    });
    expect(({} as { polluted?: boolean }).polluted).toBeUndefined();
  });

  it('are refused in a value, at the top and as a name', () => {
    const own = Object.fromEntries([['__proto__', { kind: 'food' }]]);
    expect(codes({ ...good, ingredients: own })).toEqual(['hostile-key']);
    expect(codes(JSON.parse('{ "__proto__": {} }'))).toEqual(['hostile-key']);
    expect(readKitchen('{ "constructor": 1 }')).toMatchObject({
      problems: [{ code: 'hostile-key' }],
    });
  });
});

describe('values that are not data', () => {
  const throwing = new Proxy(
    {},
    {
      ownKeys: () => {
        throw new Error('no');
      },
    },
  );
  const getter = {
    get format(): string {
      throw new Error('no');
    },
  };

  it.each([
    ['undefined', undefined],
    ['a function', () => good],
    ['a symbol', Symbol('sugar')],
    ['a bigint', 10n],
    ['a date', new Date(0)],
    ['a map', new Map()],
    ['a function inside', { ...good, note: () => 'x' }],
    ['a bigint inside', { ...good, pieces: { count: 60n } }],
    ['a date inside', { ...good, note: new Date(0) }],
    ['an object that throws', throwing],
    ['a field that throws', getter],
    ['a list with a hole', { ...good, formula: [good.formula[0], undefined] }],
  ])('are refused: %s', (_, input) => {
    expect(codes(input)).toEqual(['wrong-type']);
  });

  it('are not mistaken for an object of another frame or without a prototype', () => {
    const bare = Object.assign(Object.create(null), good);
    expect(readBatch(bare)).toStrictEqual({ kind: 'batch', batch: good });
  });
});
