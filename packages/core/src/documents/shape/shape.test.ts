import { describe, expect, expectTypeOf, it } from 'vitest';
import { BATCH_LIMITS, WHOLE_NUMBER_FIELDS } from '../../job/batch/limits.js';
import type { BatchDocument } from '../../job/batch/types.js';
import type { KitchenDocument } from '../kitchen/types.js';
import { batchShape } from './batch.js';
import type { kitchenShape } from './kitchen.js';
import { isGroup } from './look-at.js';
import type { Shape, Shaped } from './types.js';

/** The same type with every intersection laid flat, so that two ways of writing it compare equal. */
type Flat<T> = T extends string
  ? string extends T
    ? string
    : T
  : T extends readonly (infer Item)[]
    ? readonly Flat<Item>[]
    : T extends object
      ? { [K in keyof T]: Flat<T[K]> }
      : T;

/** Every number of a shape, as the pattern of the path that leads to it. */
function numbersOf(shape: Shape, path: readonly string[] = []): readonly string[] {
  if (shape === 'number') return [path.join('/')];
  if (!isGroup(shape)) return [];
  if ('list' in shape) return numbersOf(shape.list, [...path, '*']);
  if ('entries' in shape) return numbersOf(shape.entries, [...path, '*']);
  if ('either' in shape) return shape.either.flatMap((branch) => numbersOf(branch, path));
  return Object.entries(shape.fields).flatMap(([key, held]) =>
    numbersOf(held, [...path, key.replace('?', '')]),
  );
}

describe('the shapes of the documents', () => {
  it('are those of the types a program sees', () => {
    expectTypeOf<Flat<Shaped<typeof batchShape>>>().toEqualTypeOf<Flat<BatchDocument>>();
    expectTypeOf<Flat<Shaped<typeof kitchenShape>>>().toEqualTypeOf<Flat<KitchenDocument>>();
  });

  it('would be told apart from the types by one optional field', () => {
    type More = BatchDocument & { readonly spoon?: string | undefined };
    expectTypeOf<Flat<Shaped<typeof batchShape>>>().not.toEqualTypeOf<Flat<More>>();
  });

  it('hold the numbers that have limits, and no other', () => {
    expect([...new Set(numbersOf(batchShape))].sort()).toEqual(Object.keys(BATCH_LIMITS).sort());
  });
});

describe('the limits', () => {
  it.each(Object.entries(BATCH_LIMITS))('of %s are in order', (_, [low, high]) => {
    expect(low).toBeLessThan(high);
  });

  it('of what is counted are whole themselves', () => {
    for (const field of WHOLE_NUMBER_FIELDS) {
      expect(BATCH_LIMITS[field].every(Number.isInteger), field).toBe(true);
    }
  });
});
