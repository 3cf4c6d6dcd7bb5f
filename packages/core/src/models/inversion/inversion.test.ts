import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import type { None } from '../../foundation/results/types.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { dryEnd } from './dry-end.js';
import { type InversionOptions, inversion } from './inversion.js';
import { inversionRate } from './inversion-rate.js';
import { sucroseIn } from './inverted-mixture.js';

const cooked = solutionOf('sucrose', { drySolidsMassFraction: 0.975 });

function answer<T extends object>(result: T | None): T {
  if (isNone(result)) throw new Error(result.reason);
  return result as T;
}

const run = (of: Mixture, options: InversionOptions) => answer(inversion(of, options));

const boil = [0, 1, 2, 3, 4].map((at) => ({
  timeS: 300 * at,
  temperatureC: 106 + 10 * at,
  drySolidsMassFraction: 0.72 + 0.06 * at,
}));
const charge = solutionOf('sucrose', { drySolidsMassFraction: 0.72 });

describe('inversionRate', () => {
  it('grows 10.5-fold from 120 to 150 °C, and tenfold for each pH', () => {
    const at = (temperatureC: number, pH: number) =>
      inversionRate({ temperatureC, pH, waterGPerMl: 0.3 }).ratePerMin;
    expect(at(150, 3) / at(120, 3)).toBeCloseTo(10.53, 2);
    expect(at(150, 3) / at(110, 3)).toBeCloseTo(25.05, 2);
    expect(at(100, 2) / at(100, 3)).toBeCloseTo(10, 9);
  });

  it('says where nobody measured, and refuses what cannot be meant', () => {
    const at = { temperatureC: 100, pH: 3, waterGPerMl: 0.4 };
    expect(inversionRate(at).warnings).toEqual([]);
    expect(inversionRate({ ...at, temperatureC: 106 }).warnings).toEqual([
      {
        code: 'outside-tested-range',
        parameter: 'temperatureC',
        value: 106,
        limits: [23, 105],
      },
    ]);
    expect(() => inversionRate({ ...at, pH: 15 })).toThrow(/between -2 and 14/);
    expect(() => inversionRate({ ...at, temperatureC: 201 })).toThrow(/between 0 and 200/);
    expect(() => inversionRate({ ...at, waterGPerMl: 40 })).toThrow(/percentage/);
  });
});

describe('the dry end', () => {
  it('slows the middle tenfold in thirteen parts, and the low end three times more', () => {
    expect(dryEnd('middle', 0.85)).toBe(1);
    expect(dryEnd('middle', 0.98)).toBeCloseTo(0.1, 12);
    expect(dryEnd('low', 0.98)).toBeCloseTo(0.1 / 3, 12);
    expect(dryEnd('low', 0.8)).toBe(1);
    expect(dryEnd('upper', 0.98)).toBe(1);
  });
});

describe('inversion', () => {
  it('of a cooked mass with a per cent of acid, two minutes at 120 °C, is a few per cent', () => {
    const { invertedFraction, band, limitedByWater, warnings } = run(cooked, {
      temperatureC: 120,
      minutes: 2,
      acids: { 'citric-acid': 1 },
    });
    expect(invertedFraction).toBeCloseTo(0.086, 3);
    expect(band[0]).toBeCloseTo(0.031, 3);
    expect(band[1]).toBeCloseTo(0.4341, 4);
    expect(limitedByWater).toBe(false);
    expect(warnings.map(({ parameter, value }) => [parameter, value])).toEqual([
      ['temperatureC', 120],
      ['dissolvedMassFraction', expect.closeTo(0.975, 12)],
    ]);
  });

  it('stops where the water is gone', () => {
    const {
      invertedFraction,
      limitedByWater,
      waterConsumedG,
      mixture: after,
    } = run(cooked, {
      temperatureC: 145,
      minutes: 60,
      acids: { 'citric-acid': 1 },
    });
    expect(limitedByWater).toBe(true);
    expect(invertedFraction).toBeCloseTo(2.5 / (97.5 * 0.05263), 3);
    expect(waterConsumedG).toBeCloseTo(2.5, 3);
    expect(after.waterG).toBeCloseTo(0, 3);
  });

  it('keeps the mass: water goes into the sugar, and late acid is in it', () => {
    const {
      invertedG,
      waterConsumedG,
      mixture: after,
    } = run(cooked, {
      temperatureC: 120,
      minutes: 5,
      acids: { 'citric-acid': 1 },
    });
    expect(after.massG).toBeCloseTo(101, 9);
    expect(after.waterG).toBeCloseTo(2.5 - waterConsumedG, 9);
    expect(sucroseIn(after)).toBeCloseTo(97.5 - invertedG, 9);
    expect(after.solids.map((solid) => solid.kind === 'pure' && solid.species)).toEqual([
      'sucrose',
      'citric-acid',
      'glucose',
      'fructose',
    ]);
  });

  it('reads acid from the mixture as from the options', () => {
    const sour = mixture([
      { ingredient: 'sucrose', massG: 97.5 },
      { ingredient: 'water', massG: 2.5 },
      { ingredient: 'citric-acid', massG: 1, drySolidsMassFraction: 1 },
    ]);
    const held = { temperatureC: 120, minutes: 2 };
    const inside = run(sour, held).invertedFraction;
    const beside = run(cooked, { ...held, acids: { 'citric-acid': 1 } }).invertedFraction;
    // Inside, the acid counts among the solids, which makes the mass a little drier.
    expect(inside).toBeLessThan(beside);
    expect(inside).toBeGreaterThan(0.98 * beside);
  });

  it('holds the water of the path while it boils, and only less steams away', () => {
    const acids = { 'citric-acid': 0.1 };
    const { waterConsumedG, mixture: after } = run(charge, { path: boil, acids });
    expect(waterConsumedG).toBeGreaterThan(2);
    expect(after.waterG).toBeCloseTo((72 * 0.04) / 0.96, 9);
  });

  it('eats what is there once the path keeps its water', () => {
    const rest = [...boil, { timeS: 1_800, temperatureC: 130, drySolidsMassFraction: 0.96 }];
    const acids = { 'citric-acid': 0.1 };
    const before = run(charge, { path: boil, acids });
    const after = run(charge, { path: rest, acids });
    expect(after.mixture.waterG).toBeCloseTo(
      before.mixture.waterG - (after.waterConsumedG - before.waterConsumedG),
      1,
    );
  });

  it('lets water that joins on the way in', () => {
    const wetter = [
      { timeS: 0, temperatureC: 120, drySolidsMassFraction: 0.95 },
      { timeS: 10, temperatureC: 120, drySolidsMassFraction: 0.9 },
    ];
    expect(run(charge, { path: wetter }).mixture.waterG).toBeCloseTo(8, 3);
  });

  it('costs less the later the acid joins', () => {
    const acids = { 'citric-acid': 0.5 };
    const fractions = [0, 300, 900, 1_140, 1_200].map(
      (acidsFromS) => run(charge, { path: boil, acids, acidsFromS }).invertedFraction,
    );
    expect(fractions).toEqual([...fractions].sort((a, b) => b - a));
    const none = run(charge, { path: boil }).invertedFraction;
    expect(fractions[4]).toBeCloseTo(none, 3);
  });

  it('takes the pH of the syrup where there is no acid, its spread into the band', () => {
    const usual = run(charge, { path: boil });
    const given = run(charge, { path: boil, syrupPH: 5 });
    expect(given.invertedFraction).toBe(usual.invertedFraction);
    expect(usual.band[0]).toBeLessThan(given.band[0]);
    expect(usual.band[1]).toBeCloseTo(run(charge, { path: boil, syrupPH: 4.5 }).band[1], 12);
  });

  it('is eaten by hard water', () => {
    const acids = { 'potassium-hydrogen-tartrate': 0.1 };
    const soft = run(charge, { path: boil, acids }).invertedFraction;
    const hard = run(charge, { path: boil, acids, alkalinityMmolPerL: 6 }).invertedFraction;
    expect(hard).toBeLessThan(0.5 * soft);
    const little = { path: boil, acids, alkalinityMmolPerL: 6, tapWaterG: 0 };
    expect(run(charge, little).invertedFraction).toBe(soft);
  });

  it('has nothing to say without sucrose', () => {
    const isomalt = solutionOf('isomalt', { drySolidsMassFraction: 0.98 });
    const none = { kind: 'none', reason: 'no-sucrose' };
    expect(inversion(isomalt, { temperatureC: 150, minutes: 5 })).toEqual(none);
    const water = solutionOf('sucrose', { drySolidsMassFraction: 0 });
    expect(inversion(water, { path: boil })).toEqual(none);
  });

  it('does nothing without water, and nothing in no time', () => {
    const dry = solutionOf('sucrose', { drySolidsMassFraction: 1 });
    expect(run(dry, { temperatureC: 150, minutes: 5 })).toMatchObject({
      invertedFraction: 0,
      limitedByWater: true,
    });
    expect(run(cooked, { temperatureC: 150, minutes: 0 }).invertedFraction).toBe(0);
    expect(run(cooked, { path: boil.slice(0, 1) }).invertedFraction).toBe(0);
  });

  it('refuses a path that cannot be walked', () => {
    const [a, b] = boil;
    if (a === undefined || b === undefined) throw new Error('no boil');
    const refused = (options: InversionOptions) => expect(() => inversion(charge, options));
    refused({ path: [] }).toThrow('The path holds no point; received 0.');
    refused({ path: [b, a] }).toThrow('The path runs back in time; received 0.');
    refused({ path: [{ ...a, temperatureC: 201 }] }).toThrow(/Temperature c/);
    refused({ path: [{ ...a, drySolidsMassFraction: 72 }] }).toThrow(/percentage/);
    refused({ path: [{ ...a, timeS: -1 }] }).toThrow(/Time s/);
    refused({ path: boil, acidsFromS: 1_201 }).toThrow(/Acids from s/);
    refused({ temperatureC: 120, minutes: -1 }).toThrow(/Minutes/);
    refused({ temperatureC: 120, minutes: 1, syrupPH: 12 }).toThrow(/between 2 and 9/);
  });
});
