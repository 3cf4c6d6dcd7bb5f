import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import type { None } from '../../foundation/results/types.js';
import type { IngredientId } from '../../matter/ingredients/types.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { glassTransition } from '../glass/index.js';
import { GRAINING_CONSTANTS } from './graining-constants.js';
import { grainingScore } from './graining-score.js';
import { type GrainingTime, grainingTime, grainingTimeInProcess } from './graining-time.js';

function doctored(doctor: IngredientId, percent: number, waterMassFraction: number): Mixture {
  return mixture([
    { ingredient: 'sucrose', massG: 100 - percent },
    { ingredient: doctor, massG: percent, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: (100 * waterMassFraction) / (1 - waterMassFraction) },
  ]);
}

function answered<T extends object>(result: T): Exclude<T, None> {
  if (isNone(result)) throw new Error(`no answer: ${result.reason}`);
  return result as Exclude<T, None>;
}

describe('grainingTime', () => {
  const SUGAR = doctored('glucose-syrup', 0, 0.05);

  it('gives a sweet of 60:40 at 2 % of water thousands of years', () => {
    const time: GrainingTime = answered(
      grainingTime(doctored('glucose-syrup', 40, 0.02), { temperatureC: 25 }),
    );
    expect(time.log10Days).toBeCloseTo(7.45, 2);
    expect(time.days).toBeCloseTo(10 ** time.log10Days, 0);
    expect(time.aboveGlassK).toBeCloseTo(-27.3, 1);
    expect(time.doctorPercent).toBeCloseTo(40, 9);
    expect(time.atTheCap).toBe(false);
    expect(time.band[0] * 10).toBeCloseTo(time.days, 0);
    expect(time.band[1] / 10).toBeCloseTo(time.days, 0);
  });

  it('is three years at the glass transition, from both sides', () => {
    const { glassTransitionC } = glassTransition(SUGAR);
    for (const temperatureC of [glassTransitionC - 1e-9, glassTransitionC + 1e-9]) {
      expect(answered(grainingTime(SUGAR, { temperatureC })).log10Days).toBeCloseTo(3.04, 6);
    }
  });

  it('is a tenth with crystals in it', () => {
    const clear = answered(grainingTime(SUGAR, { temperatureC: 25 }));
    const seeded = answered(grainingTime(SUGAR, { temperatureC: 25, seeded: true }));
    expect(seeded.days * 10).toBeCloseTo(clear.days, 9);
  });

  it('grows no faster from 36 K above the glass transition on', () => {
    const { glassTransitionC } = glassTransition(SUGAR);
    const at = (aboveK: number) =>
      answered(grainingTime(SUGAR, { temperatureC: glassTransitionC + aboveK }));
    expect(at(35).atTheCap).toBe(false);
    expect(at(36).atTheCap).toBe(true);
    expect(at(60).log10Days).toBe(at(36).log10Days);
    expect(at(36).log10Days).toBeCloseTo(3.04 - 5, 12);
  });

  it('counts dry sugar glass as more than its water can hold', () => {
    const dry = solutionOf('sucrose', { drySolidsMassFraction: 1 });
    expect(answered(grainingTime(dry, { temperatureC: 25 })).aboveGlassK).toBeCloseTo(-37, 9);
  });

  it.each([
    ['a thin syrup', solutionOf('sucrose', { drySolidsMassFraction: 0.6 }), 'not-supersaturated'],
    ['glucose syrup', doctored('glucose-syrup', 100, 0.02), 'no-sucrose'],
    ['isomalt', doctored('isomalt', 100, 0.02), 'no-kinetic-data'],
    ['isomalt with a little sugar', doctored('isomalt', 60, 0.02), 'no-kinetic-data'],
    ['much glucose', doctored('glucose', 60, 0.02), 'no-kinetic-data'],
    ['no sugar', mixture([{ ingredient: 'salt', massG: 1 }]), 'no-sucrose'],
  ])('has no answer for %s', (_, mass, reason) => {
    expect(grainingTime(mass, { temperatureC: 25 })).toEqual({ kind: 'none', reason });
    expect(grainingTimeInProcess(mass, { formingC: [25, 100] })).toEqual({ kind: 'none', reason });
  });

  it('adds two sugar alcohols up, not two sugars', () => {
    const massOf = (first: IngredientId, second: IngredientId) =>
      mixture([
        { ingredient: 'sucrose', massG: 40 },
        { ingredient: first, massG: 30, drySolidsMassFraction: 1 },
        { ingredient: second, massG: 30, drySolidsMassFraction: 1 },
        { ingredient: 'water', massG: 2 },
      ]);
    expect(isNone(grainingTime(massOf('glucose', 'fructose'), { temperatureC: 25 }))).toBe(false);
    expect(isNone(grainingTime(massOf('sorbitol', 'maltitol'), { temperatureC: 25 }))).toBe(true);
  });

  it('answers in a freezer, and says that solubility ends before', () => {
    const { log10Days, warnings } = answered(grainingTime(SUGAR, { temperatureC: -18 }));
    expect(log10Days).toBeGreaterThan(3.04);
    expect(warnings).toEqual([
      {
        code: 'outside-tested-range',
        parameter: 'temperatureC',
        value: -18,
        limits: [-13, 100],
      },
    ]);
    expect(answered(grainingTime(SUGAR, { temperatureC: -13 })).warnings).toEqual([]);
  });

  it.each([-61, 101, Number.NaN])('refuses %f °C', (temperatureC) => {
    expect(() => grainingTime(SUGAR, { temperatureC })).toThrow(
      expect.objectContaining({ parameter: 'temperatureC', limits: [-60, 100] }),
    );
  });
});

describe('grainingTimeInProcess', () => {
  it('grows as at the hot end and is gated as at the cold end', () => {
    const mass = doctored('glucose-syrup', 20, 0.05);
    const worked = answered(grainingTimeInProcess(mass, { formingC: [30, 45] }));
    expect(worked).toEqual(answered(grainingTime(mass, { temperatureC: 45 })));
    const syrup = solutionOf('sucrose', { drySolidsMassFraction: 0.75 });
    expect(isNone(grainingTimeInProcess(syrup, { formingC: [90, 100] }))).toBe(true);
    expect(isNone(grainingTimeInProcess(syrup, { formingC: [20, 100] }))).toBe(false);
  });

  it.each([
    ['a cold end over 100', [101, 120], 101, [-13, 100]],
    ['a cold end in the freezer', [-14, 120], -14, [-13, 100]],
    ['ends the wrong way round', [90, 60], 60, [90, 230]],
    ['a burning end', [90, 231], 231, [90, 230]],
  ] as const)('refuses %s', (_, formingC, received, limits) => {
    expect(() => grainingTimeInProcess(doctored('glucose-syrup', 20, 0.05), { formingC })).toThrow(
      expect.objectContaining({ parameter: 'formingC', received, limits }),
    );
  });
});

describe('grainingScore', () => {
  it('has the band of the time: the decade it is known to', () => {
    expect(GRAINING_CONSTANTS.bandDecades.value).toBe(1);
  });

  it('is 50 where both times are the same', () => {
    expect(grainingScore({ days: 40, targetDays: 40 })).toEqual({
      score: 50,
      band: [expect.closeTo(16.7, 9), expect.closeTo(83.3, 9)],
      word: 'likely',
    });
  });

  it.each([
    [1e7, 365, 0, 'low'],
    [100 * 10 ** 0.752, 100, 24.96, 'low'],
    [100 * 10 ** 0.75, 100, 25.03, 'watch'],
    [100.01, 100, 49.999, 'watch'],
    [100, 100 * 10 ** 0.75, 74.98, 'likely'],
    [100, 100 * 10 ** 0.752, 75.04, 'near-certain'],
    [0.5, 365, 100, 'near-certain'],
  ])('is, for %f days of %f wanted, %f and %s', (days, targetDays, score, word) => {
    const result = grainingScore({ days, targetDays });
    expect(result.score).toBeCloseTo(score, 1);
    expect(result.word).toBe(word);
    expect(result.band[0]).toBeGreaterThanOrEqual(0);
    expect(result.band[1]).toBeLessThanOrEqual(100);
  });

  it.each(['days', 'targetDays'])('refuses no %s', (parameter) => {
    for (const received of [0, -1, Number.NaN]) {
      expect(() => grainingScore({ days: 1, targetDays: 1, [parameter]: received })).toThrow(
        expect.objectContaining({ parameter, received }),
      );
    }
  });
});
