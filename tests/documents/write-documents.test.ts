import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { BatchDocument } from 'vitrose';
import {
  batchText,
  type KitchenDocument,
  kitchenText,
  readBatch,
  readKitchen,
} from 'vitrose/documents';
import { batchDocument } from './arbitrary-batch.js';
import { group, hob, kitchen, mould, pan, room, thermometer, within } from './arbitrary-fields.js';

/** The same document with every object's keys the other way round. */
function reversed<T>(value: T): T {
  if (Array.isArray(value)) return value.map(reversed) as T;
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).reverse();
  return Object.fromEntries(entries.map(([key, held]) => [key, reversed(held)])) as T;
}

const small: BatchDocument = {
  cook: { toSeaLevelC: 148 },
  formula: [{ massG: 200, ingredient: 'sucrose' }],
  format: 'vitrose.batch/1',
};

describe('a batch as text', () => {
  it('comes back as it was', () => {
    fc.assert(
      fc.property(batchDocument, (batch) => {
        expect(readBatch(batchText(batch))).toEqual({ kind: 'batch', batch });
      }),
    );
  });

  it('is the same text whatever order the fields were set in', () => {
    fc.assert(
      fc.property(batchDocument, (batch) => {
        expect(batchText(reversed(batch))).toBe(batchText(batch));
      }),
    );
  });

  it('is indented, begins with the format and ends with a line break', () => {
    expect(batchText({ ...small, name: undefined })).toBe(
      [
        '{',
        '  "format": "vitrose.batch/1",',
        '  "formula": [',
        '    {',
        '      "ingredient": "sucrose",',
        '      "massG": 200',
        '    }',
        '  ],',
        '  "cook": {',
        '    "toSeaLevelC": 148',
        '  }',
        '}',
        '',
      ].join('\n'),
    );
  });

  it('loses nothing, even what no reader knows', () => {
    const more = { ...small, zest: 1, aroma: ['lime'] };
    expect(JSON.parse(batchText(more))).toEqual(more);
  });

  it.each([Number.NaN, Number.POSITIVE_INFINITY])(
    'is refused for %d, which JSON would write as null',
    (massG) => {
      const batch: BatchDocument = { ...small, formula: [{ ingredient: 'sucrose', massG }] };
      expect(() => batchText(batch)).toThrow(
        expect.objectContaining({ name: 'ModelRangeError', parameter: '/formula/0/massG' }),
      );
    },
  );
});

describe('a kitchen', () => {
  const kitchenDocument: fc.Arbitrary<KitchenDocument> = group(
    {
      format: fc.constant('vitrose.kitchen/1' as const),
      kitchen,
      thermometer,
      hob,
      pan,
      room,
      water: within('water/alkalinityMmolPerL').map((alkalinityMmolPerL) => ({
        alkalinityMmolPerL,
      })),
      mould,
    },
    ['format'],
  );

  it('is read and written without loss', () => {
    fc.assert(
      fc.property(kitchenDocument, (document) => {
        expect(readKitchen(document)).toEqual({ kind: 'kitchen', kitchen: document });
        expect(readKitchen(kitchenText(document))).toEqual({ kind: 'kitchen', kitchen: document });
        expect(kitchenText(reversed(document))).toBe(kitchenText(document));
      }),
    );
  });

  it('can be laid into a batch as it is', () => {
    fc.assert(
      fc.property(kitchenDocument, ({ format, ...fields }) => {
        expect(readBatch({ ...small, ...fields }).kind).toBe('batch');
      }),
    );
  });

  it('is not a batch, and the other way round', () => {
    expect(readBatch({ format: 'vitrose.kitchen/1' })).toMatchObject({
      problems: [{ code: 'wrong-format' }, { code: 'missing' }, { code: 'missing' }],
    });
    expect(readKitchen(small)).toMatchObject({
      problems: [
        { code: 'wrong-format', known: ['vitrose.kitchen/1'] },
        { code: 'unknown-field', path: '/cook' },
        { code: 'unknown-field', path: '/formula' },
      ],
    });
  });

  it('has the same limits as a batch, and a newer version of its own', () => {
    const hot = { format: 'vitrose.kitchen/1', room: { temperatureC: 75 } };
    expect(readKitchen(hot)).toMatchObject({ problems: [{ code: 'perhaps-fahrenheit' }] });
    expect(readKitchen({ ...hot, format: 'vitrose.kitchen/2' })).toMatchObject({
      problems: [{ code: 'newer-format' }],
    });
  });
});
