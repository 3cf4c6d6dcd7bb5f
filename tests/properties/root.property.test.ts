import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
// The root finder is no part of the public library; everything that solves stands on it.
import { findRoot } from '../../packages/core/src/foundation/numeric/find-root.js';

const crossing = fc.double({ min: -1, max: 1, noNaN: true });
const reach = fc.double({ min: 0.01, max: 10, noNaN: true });

/** Shapes that cross zero once, at a place of our choosing. */
const shapes: readonly ((x: number) => number)[] = [
  (x) => x,
  (x) => x ** 3,
  (x) => Math.expm1(8 * x),
  (x) => -Math.expm1(-20 * x),
  (x) => Math.atan(100 * x),
  (x) => x * (1 + x ** 2),
  (x) => (x < 0 ? x : 50 * x),
];
const shape = fc.constantFrom(...shapes);
const sign = fc.constantFrom(1, -1);

describe('findRoot', () => {
  it('finds the crossing within its tolerance, and never looks outside its bracket', () => {
    fc.assert(
      fc.property(crossing, reach, reach, shape, sign, (at, left, right, f, up) => {
        const [low, high] = [at - left, at + right];
        const root = findRoot(
          (x) => {
            expect(x).toBeGreaterThanOrEqual(low);
            expect(x).toBeLessThanOrEqual(high);
            return up * f(x - at);
          },
          [low, high],
        );
        expect(Math.abs(root - at)).toBeLessThanOrEqual(1.01e-10);
      }),
    );
  });

  it('does not mind which end is named first', () => {
    fc.assert(
      fc.property(crossing, reach, reach, shape, (at, left, right, f) => {
        const root = findRoot((x) => f(x - at), [at + right, at - left]);
        expect(Math.abs(root - at)).toBeLessThanOrEqual(1.01e-10);
      }),
    );
  });
});
