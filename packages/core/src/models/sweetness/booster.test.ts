import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import type { None } from '../../foundation/results/types.js';
import { combine } from '../../matter/mixture/combine.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import { boosterForSweetness } from './booster.js';
import { boosterPairForSweetness } from './booster-pair.js';
import type { Booster } from './booster-types.js';

const ISOMALT = solutionOf('isomalt', { drySolidsMassFraction: 1 });
const WET = solutionOf('isomalt', { drySolidsMassFraction: 0.98 });

function answered<T extends object>(result: T): Exclude<T, None> {
  if (isNone(result)) throw new Error(`no answer: ${result.reason}`);
  return result as Exclude<T, None>;
}

describe('boosterForSweetness with an intense sweetener', () => {
  it('brings isomalt to sugar with 0.08 % of sucralose, under its cap', () => {
    const dose: Booster = answered(
      boosterForSweetness(ISOMALT, { sweetener: 'sucralose', targetRelativeSweetness: 1 }),
    );
    expect(dose.massFraction).toBeCloseTo(0.0007976, 7);
    expect(dose).toMatchObject({
      rightWithin: 1.3,
      legalCapMassFraction: 0.001,
      aboveLegalCap: false,
      heatLimitC: 120,
      lingersAlone: false,
    });
  });

  it('counts the water of the finished sweet', () => {
    const options = { sweetener: 'sucralose', targetRelativeSweetness: 1 } as const;
    const dry = answered(boosterForSweetness(ISOMALT, options));
    const wet = answered(boosterForSweetness(WET, options));
    expect(wet.massFraction / dry.massFraction).toBeCloseTo(0.98, 3);
    expect(wet.massG).toBeCloseTo(0.98 * dry.massG, 9);
  });

  it('counts what is in it already', () => {
    const options = { sweetener: 'sucralose', targetRelativeSweetness: 1 } as const;
    const plain = answered(boosterForSweetness(ISOMALT, options));
    const half = mixture([
      { ingredient: 'isomalt', massG: 100, drySolidsMassFraction: 1 },
      { ingredient: 'sucralose', massG: plain.massG / 2, drySolidsMassFraction: 1 },
    ]);
    const rest = answered(boosterForSweetness(half, options));
    expect(rest.massG).toBeCloseTo(plain.massG / 2, 9);
    expect(rest.massFraction).toBeCloseTo(plain.massFraction, 12);
  });

  it('says when the cap is passed, and when none is known', () => {
    const over = answered(
      boosterForSweetness(ISOMALT, { sweetener: 'aspartame', targetRelativeSweetness: 1 }),
    );
    expect(over.aboveLegalCap).toBe(true);
    const unknown = answered(
      boosterForSweetness(ISOMALT, { sweetener: 'saccharin', targetRelativeSweetness: 1 }),
    );
    expect(unknown).not.toHaveProperty('legalCapMassFraction');
    expect(unknown).not.toHaveProperty('aboveLegalCap');
    expect(unknown).not.toHaveProperty('heatLimitC');
    expect(unknown.rightWithin).toBe(2);
  });

  it('says that steviol glycosides linger, and that all of it is from memory', () => {
    const dose = answered(
      boosterForSweetness(ISOMALT, {
        sweetener: 'steviol-glycosides',
        targetRelativeSweetness: 0.8,
      }),
    );
    expect(dose.lingersAlone).toBe(true);
    expect(dose.warnings[0]).toMatchObject({
      code: 'shown-from-memory',
      subject: 'steviol-glycosides',
    });
  });

  it.each([
    ['sucralose', 120.1],
    ['aspartame', 135],
  ] as const)('has no answer for %s in a mass of %f °C', (sweetener, addedAtC) => {
    const options = { sweetener, targetRelativeSweetness: 0.8 };
    expect(boosterForSweetness(ISOMALT, { ...options, addedAtC })).toEqual({
      kind: 'none',
      reason: 'too-hot',
    });
    expect(isNone(boosterForSweetness(ISOMALT, { ...options, addedAtC: 120 }))).toBe(false);
  });

  it('lets acesulfame-K into the boil', () => {
    const options = { sweetener: 'acesulfame-k', targetRelativeSweetness: 0.8 } as const;
    expect(boosterForSweetness(ISOMALT, { ...options, addedAtC: 150 })).toEqual(
      boosterForSweetness(ISOMALT, options),
    );
  });

  it('has a ceiling', () => {
    expect(
      boosterForSweetness(ISOMALT, {
        sweetener: 'steviol-glycosides',
        targetRelativeSweetness: 1.5,
      }),
    ).toEqual({ kind: 'none', reason: 'ceiling' });
  });

  it('reaches 1 with its band where the rest may leave it under the ceiling', () => {
    const { band } = answered(
      boosterForSweetness(ISOMALT, {
        sweetener: 'steviol-glycosides',
        targetRelativeSweetness: 1.35,
      }),
    );
    expect(band[1]).toBe(1);
  });

  it('reaches nothing with its band where the rest may be sweet enough', () => {
    const { band } = answered(
      boosterForSweetness(ISOMALT, { sweetener: 'sucralose', targetRelativeSweetness: 0.6 }),
    );
    expect(band[0]).toBe(0);
    expect(band[1]).toBeGreaterThan(0);
  });
});

describe('boosterForSweetness with a bulk sweetener', () => {
  it('needs two thirds of xylitol for isomalt at 0.80', () => {
    const { massFraction, massG, lingersAlone } = answered(
      boosterForSweetness(ISOMALT, { sweetener: 'xylitol', targetRelativeSweetness: 0.8 }),
    );
    expect(massFraction).toBeCloseTo(2 / 3, 12);
    expect(massG).toBeCloseTo(200, 9);
    expect(lingersAlone).toBe(false);
  });

  it('needs 71 % of fructose for sugar', () => {
    const { massFraction } = answered(
      boosterForSweetness(ISOMALT, { sweetener: 'fructose', targetRelativeSweetness: 1 }),
    );
    expect(massFraction).toBeCloseTo(0.714, 3);
  });

  it('counts what is in it already, and its water', () => {
    const blend = combine([WET, solutionOf('xylitol', { drySolidsMassFraction: 1 })]);
    const { massFraction, massG } = answered(
      boosterForSweetness(blend, { sweetener: 'xylitol', targetRelativeSweetness: 0.8 }),
    );
    // 98 of isomalt want 196 of xylitol; 100 are there, with 2 of water.
    expect(massG).toBeCloseTo(96, 9);
    expect(massFraction).toBeCloseTo(196 / 296, 9);
  });

  it.each([
    ['xylitol', 1],
    ['xylitol', 0.95],
    ['sorbitol', 0.7],
  ] as const)('knows that %s never brings isomalt to %f', (sweetener, targetRelativeSweetness) => {
    expect(boosterForSweetness(ISOMALT, { sweetener, targetRelativeSweetness })).toEqual({
      kind: 'none',
      reason: 'weaker-than-target',
    });
  });

  it('reaches 1 with its band where the lowest value in print never does', () => {
    const { band } = answered(
      boosterForSweetness(ISOMALT, { sweetener: 'xylitol', targetRelativeSweetness: 0.9 }),
    );
    expect(band[1]).toBe(1);
    expect(band[0]).toBeCloseTo((0.9 - 0.65) / (1.1 - 0.65), 9);
  });

  it('reaches nothing with its band where the sweet may be sweet enough', () => {
    const { band } = answered(
      boosterForSweetness(ISOMALT, { sweetener: 'xylitol', targetRelativeSweetness: 0.6 }),
    );
    expect(band[0]).toBe(0);
  });
});

describe('boosterForSweetness', () => {
  it('has nothing to add to what is as sweet', () => {
    const sugar = solutionOf('sucrose', { drySolidsMassFraction: 0.98 });
    for (const sweetener of ['sucralose', 'fructose'] as const) {
      expect(boosterForSweetness(sugar, { sweetener, targetRelativeSweetness: 1 })).toEqual({
        kind: 'none',
        reason: 'already-as-sweet',
      });
    }
  });

  it('cannot make water sweet without a sweet', () => {
    const pinch = mixture([{ ingredient: 'sucralose', massG: 1 }]);
    expect(
      boosterForSweetness(pinch, { sweetener: 'sucralose', targetRelativeSweetness: 3 }),
    ).toEqual({ kind: 'none', reason: 'ceiling' });
  });

  it.each([
    ['targetRelativeSweetness', 0, [0.01, 3]],
    ['targetRelativeSweetness', 3.1, [0.01, 3]],
    ['addedAtC', 251, [-20, 250]],
    ['addedAtC', Number.NaN, [-20, 250]],
  ])('refuses %s of %f', (parameter, received, limits) => {
    const options = { targetRelativeSweetness: 1, [parameter]: received };
    const thrown = expect.objectContaining({ parameter, received, limits });
    expect(() => boosterForSweetness(ISOMALT, { sweetener: 'sucralose', ...options })).toThrow(
      thrown,
    );
    expect(() => boosterPairForSweetness(ISOMALT, options)).toThrow(thrown);
  });
});
