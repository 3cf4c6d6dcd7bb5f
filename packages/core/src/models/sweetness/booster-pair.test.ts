import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import type { None } from '../../foundation/results/types.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import { boosterPairForSweetness } from './booster-pair.js';
import { relativeSweetness } from './relative-sweetness.js';

const ISOMALT = solutionOf('isomalt', { drySolidsMassFraction: 1 });
const WET = solutionOf('isomalt', { drySolidsMassFraction: 0.98 });

function answered<T extends object>(result: T): Exclude<T, None> {
  if (isNone(result)) throw new Error(`no answer: ${result.reason}`);
  return result as Exclude<T, None>;
}

describe('boosterPairForSweetness', () => {
  it('gives back the target, half of it from each', () => {
    for (const synergy of [1, 1.2, 1.35]) {
      const { acesulfameK, aspartame } = answered(
        boosterPairForSweetness(WET, { targetRelativeSweetness: 0.9, synergy }),
      );
      const boosted = mixture([
        { ingredient: 'isomalt', massG: 98, drySolidsMassFraction: 1 },
        { ingredient: 'acesulfame-k', massG: acesulfameK.massG, drySolidsMassFraction: 1 },
        { ingredient: 'aspartame', massG: aspartame.massG, drySolidsMassFraction: 1 },
      ]);
      const options = { synergy: { acesulfameKWithAspartame: synergy } };
      expect(relativeSweetness(boosted, options).relativeSweetness).toBeCloseTo(0.9, 9);
    }
  });

  it('does not stand the boil, has a ceiling, and adds nothing to sugar', () => {
    const reason = (result: object) => (isNone(result) ? result.reason : undefined);
    const at = { targetRelativeSweetness: 0.9 };
    expect(reason(boosterPairForSweetness(ISOMALT, { ...at, addedAtC: 121 }))).toBe('too-hot');
    expect(reason(boosterPairForSweetness(ISOMALT, { targetRelativeSweetness: 3 }))).toBe(
      'ceiling',
    );
    const sugar = solutionOf('sucrose', { drySolidsMassFraction: 1 });
    expect(reason(boosterPairForSweetness(sugar, at))).toBe('already-as-sweet');
  });

  it('asks for a sweet without either', () => {
    const half = mixture([
      { ingredient: 'isomalt', massG: 100 },
      { ingredient: 'aspartame', massG: 0.01 },
    ]);
    expect(boosterPairForSweetness(half, { targetRelativeSweetness: 0.9 })).toEqual({
      kind: 'none',
      reason: 'already-in-it',
    });
  });

  it('refuses more synergy than anyone has reported', () => {
    expect(() =>
      boosterPairForSweetness(ISOMALT, { targetRelativeSweetness: 0.9, synergy: 1.4 }),
    ).toThrow(expect.objectContaining({ parameter: 'synergy', limits: [1, 1.35] }));
  });
});
