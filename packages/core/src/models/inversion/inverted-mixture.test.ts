import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import type { None } from '../../foundation/results/types.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import { invertedMixture } from './inverted-mixture.js';

function answer<T extends object>(result: T | None): T {
  if (isNone(result)) throw new Error(result.reason);
  return result as T;
}

describe('invertedMixture', () => {
  const sweet = mixture([
    { ingredient: 'sucrose', massG: 58.8 },
    { ingredient: 'dried-glucose-syrup', massG: 39.2, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: 2 },
  ]);

  it('splits sugar into two halves and takes the water for it', () => {
    const after = answer(invertedMixture(sweet, { invertedFraction: 0.5 }));
    expect(after.massG).toBeCloseTo(100, 9);
    expect(after.waterG).toBeCloseTo(2 - 29.4 * 0.05263, 9);
    const [sucrose, syrup, glucose, fructose] = after.solids.map(({ massG }) => massG);
    expect(sucrose).toBeCloseTo(29.4, 9);
    expect(syrup).toBeCloseTo(39.2, 9);
    expect(glucose).toBeCloseTo((29.4 * 1.05263) / 2, 9);
    expect(fructose).toBe(glucose);
  });

  it('holds the same share of water once it has taken it back', () => {
    const after = answer(invertedMixture(sweet, { invertedFraction: 0.5, takesWaterBack: true }));
    expect(after.waterG / after.massG).toBeCloseTo(0.02, 12);
    expect(after.massG).toBeGreaterThan(100);
  });

  it('cannot split more than the water allows, unless water comes back', () => {
    expect(invertedMixture(sweet, { invertedFraction: 0.7 })).toEqual({
      kind: 'none',
      reason: 'not-enough-water',
    });
    const early = invertedMixture(sweet, { invertedFraction: 0.7, takesWaterBack: true });
    expect(isNone(early)).toBe(false);
    const limit = 2 / (58.8 * 0.05263);
    expect(answer(invertedMixture(sweet, { invertedFraction: limit })).waterG).toBeCloseTo(0, 9);
  });

  it('has nothing to split without sucrose, and refuses a percentage', () => {
    const isomalt = solutionOf('isomalt', { drySolidsMassFraction: 0.98 });
    expect(invertedMixture(isomalt, { invertedFraction: 0.1 })).toEqual({
      kind: 'none',
      reason: 'no-sucrose',
    });
    expect(() => invertedMixture(sweet, { invertedFraction: 10 })).toThrow(/percentage/);
  });
});
