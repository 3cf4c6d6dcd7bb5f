import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import { combine } from '../../matter/mixture/combine.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { waterActivity } from '../boiling/index.js';
import { criticalHumidity } from './critical-humidity.js';
import { waterDiffusionM2PerS } from './diffusion.js';
import { equilibriumRelativeHumidity } from './equilibrium-relative-humidity.js';
import { activityOnGlass, waterOnGlass } from './gab.js';
import { ISOTHERMS } from './isotherms.js';
import { waterAtRelativeHumidity } from './water-at-relative-humidity.js';

const sucrose = (water: number): Mixture =>
  solutionOf('sucrose', { drySolidsMassFraction: 1 - water });

/** 60 sucrose : 40 syrup solids of DE 42, at some water. */
function boiledSweet(water: number): Mixture {
  const dryG = 100 * (1 - water);
  return mixture([
    { ingredient: 'sucrose', massG: 0.6 * dryG },
    { ingredient: 'dried-glucose-syrup', massG: 0.4 * dryG, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: 100 * water },
  ]);
}

function humidity(of: Mixture, temperatureC = 25): number {
  const answer = equilibriumRelativeHumidity(of, { temperatureC });
  return isNone(answer) ? Number.NaN : answer.relativeHumidity;
}

describe('the isotherms', () => {
  it('give back the water they were asked for', () => {
    const parts = [
      { share: 0.5, isotherm: ISOTHERMS.sucrose },
      { share: 0.3, isotherm: ISOTHERMS['syrup-solids'] },
      { share: 0.2, isotherm: ISOTHERMS.lactose },
    ];
    for (const activity of [0, 0.1, 0.3, 0.6, 0.8]) {
      expect(activityOnGlass(parts, waterOnGlass(parts, activity))).toBeCloseTo(activity, 9);
    }
    expect(activityOnGlass(parts, 1e12)).toBeLessThan(1 / 1.16);
  });

  it('drown where a part has no end of water', () => {
    expect(waterOnGlass([{ share: 1, isotherm: ISOTHERMS.lactose }], 0.9)).toBe(Infinity);
  });
});

describe('equilibriumRelativeHumidity', () => {
  it.each([
    [0.01, 0.068],
    [0.02, 0.13],
    [0.03, 0.187],
    [0.04, 0.238],
    [0.05, 0.285],
  ])('of sucrose with %f of water is %f', (water, relativeHumidity) => {
    expect(Math.abs(humidity(sucrose(water)) - relativeHumidity)).toBeLessThan(0.001);
  });

  it('of plain syrup is the water activity of the boiling model', () => {
    const syrup = sucrose(0.3);
    const { waterActivity: activity } = waterActivity(syrup, { temperatureC: 25 });
    expect(humidity(syrup)).toBe(activity);
  });

  it('is none without water, and 15 % of the water wide', () => {
    expect(humidity(sucrose(0))).toBe(0);
    const dry = equilibriumRelativeHumidity(sucrose(0.02), { temperatureC: 25 });
    const at = (factor: number) => humidity(sucrose((0.02 * factor) / (0.98 + 0.02 * factor)));
    expect(dry).toMatchObject({
      band: [expect.closeTo(at(0.85), 9), expect.closeTo(at(1.15), 9)],
    });
  });

  it('is wider where another sugar stands in', () => {
    const width = (species: 'sucrose' | 'isomalt') => {
      const answer = equilibriumRelativeHumidity(
        solutionOf(species, { drySolidsMassFraction: 0.98 }),
        { temperatureC: 25 },
      );
      return isNone(answer) ? Number.NaN : answer.band[1] - answer.band[0];
    };
    expect(width('isomalt')).toBeGreaterThan(1.9 * width('sucrose'));
  });

  it('takes no notice of fat', () => {
    const oil = mixture([{ ingredient: 'flavour-oil', massG: 5 }]);
    expect(humidity(combine([boiledSweet(0.03), oil]))).toBeCloseTo(
      humidity(boiledSweet(0.03)),
      12,
    );
  });

  it('counts a pinch of acid as sucrose and says so', () => {
    const sour = mixture([
      { ingredient: 'sucrose', massG: 97, drySolidsMassFraction: 1 },
      { ingredient: 'citric-acid', massG: 1, drySolidsMassFraction: 1 },
      { ingredient: 'water', massG: 2 },
    ]);
    const answer = equilibriumRelativeHumidity(sour, { temperatureC: 25 });
    expect(answer).toMatchObject({
      relativeHumidity: expect.closeTo(humidity(sucrose(0.02)), 9),
      warnings: [{ code: 'species-not-modelled', subject: 'citric-acid' }],
    });
  });

  it('has no answer for what nobody measured, for ice, and for water alone', () => {
    const none = (of: Mixture, temperatureC = 25) =>
      equilibriumRelativeHumidity(of, { temperatureC });
    const xylitol = solutionOf('xylitol', { drySolidsMassFraction: 0.98 });
    expect(none(xylitol)).toEqual({ kind: 'none', reason: 'no-sorption-data' });
    expect(none(sucrose(0.02), -1)).toEqual({ kind: 'none', reason: 'no-sorption-data' });
    const water = mixture([{ ingredient: 'water', massG: 1 }]);
    expect(none(water)).toEqual({ kind: 'none', reason: 'nothing-dissolved' });
  });

  it('bears a tenth of the unmeasured and no more', () => {
    const with_ = (share: number) =>
      equilibriumRelativeHumidity(
        mixture([
          { ingredient: 'sucrose', massG: 1 - share },
          { ingredient: 'xylitol', massG: share, drySolidsMassFraction: 1 },
        ]),
        { temperatureC: 25 },
      );
    expect(isNone(with_(0.0999))).toBe(false);
    expect(isNone(with_(0.1001))).toBe(true);
  });

  it('warns outside 15 to 35 °C and refuses what is no store', () => {
    const warnings = (temperatureC: number) => {
      const answer = equilibriumRelativeHumidity(sucrose(0.02), { temperatureC });
      return isNone(answer) ? [] : answer.warnings;
    };
    expect(warnings(15)).toEqual([]);
    expect(warnings(35)).toEqual([]);
    expect(warnings(14)).toMatchObject([{ parameter: 'temperatureC', limits: [15, 35] }]);
    expect(() => equilibriumRelativeHumidity(sucrose(0.02), { temperatureC: 61 })).toThrow(
      expect.objectContaining({ parameter: 'temperatureC', limits: [-40, 60] }),
    );
  });
});

describe('waterAtRelativeHumidity', () => {
  const water = (of: Mixture, relativeHumidity: number): number => {
    const answer = waterAtRelativeHumidity(of, { relativeHumidity, temperatureC: 25 });
    return isNone(answer) ? Number.NaN : answer.moistureMassFraction;
  };

  it.each([0.005, 0.05, 0.0999, 0.1001, 0.113, 0.137, 0.1499, 0.1501, 0.3, 0.7])(
    'finds %f of water again',
    (moisture) => {
      expect(water(sucrose(0.5), humidity(sucrose(moisture)))).toBeCloseTo(moisture, 7);
      expect(water(boiledSweet(0.5), humidity(boiledSweet(moisture)))).toBeCloseTo(moisture, 7);
    },
  );

  it('is nothing in dry air and everything in fog', () => {
    expect(water(sucrose(0.02), 0)).toBe(0);
    expect(water(sucrose(0.02), 1)).toBe(1);
  });

  it('is the water of the fitted row of glucose syrup where the isotherm is its own', () => {
    const syrup = mixture([
      { ingredient: 'dried-glucose-syrup', massG: 1, drySolidsMassFraction: 1 },
    ]);
    const answer = waterAtRelativeHumidity(syrup, { relativeHumidity: 0.45, temperatureC: 25 });
    const parts = [{ share: 1, isotherm: ISOTHERMS['syrup-solids'] }];
    expect(answer).toMatchObject({
      waterGPer100GSolids: expect.closeTo(100 * waterOnGlass(parts, 0.45), 9),
    });
  });

  it('takes a percentage for what it is', () => {
    expect(() =>
      waterAtRelativeHumidity(sucrose(0.02), { relativeHumidity: 55, temperatureC: 25 }),
    ).toThrow('Is this a percentage?');
  });
});

describe('criticalHumidity', () => {
  it('of a 60:40 sweet at 25 °C is 0.30, sticks from 0.36 and is sticky at 0.42', () => {
    const answer = criticalHumidity(boiledSweet(0.02), { storeC: 25 });
    expect(answer).toMatchObject({
      relativeHumidity: expect.closeTo(0.2985, 4),
      moistureMassFraction: expect.closeTo(0.05124, 5),
      sticksFrom: { relativeHumidity: expect.closeTo(0.3602, 4) },
      stickyAt: { relativeHumidity: expect.closeTo(0.4208, 4) },
      band: [expect.closeTo(0.2449, 4), expect.closeTo(0.3481, 4)],
      warnings: [],
    });
  });

  it('does not ask how wet the sweet is now', () => {
    expect(criticalHumidity(boiledSweet(0.3), { storeC: 25 })).toMatchObject({
      relativeHumidity: expect.closeTo(0.2985, 4),
    });
  });

  it('is none for a recipe that is soft without a drop of water', () => {
    const fructose = solutionOf('fructose', { drySolidsMassFraction: 1 });
    expect(criticalHumidity(fructose, { storeC: 25 })).toEqual({
      kind: 'none',
      reason: 'already-soft',
    });
  });

  it('is none where nothing is known of the sorption', () => {
    const maltitol = solutionOf('maltitol', { drySolidsMassFraction: 1 });
    expect(criticalHumidity(maltitol, { storeC: 25 })).toMatchObject({
      reason: 'no-sorption-data',
    });
  });

  it('refuses a store of 61 °C', () => {
    expect(() => criticalHumidity(sucrose(0.02), { storeC: 61 })).toThrow(
      expect.objectContaining({ parameter: 'storeC' }),
    );
  });
});

describe('the diffusion of water', () => {
  it('is that of water in itself, and slows by nearly seven decades in the glass', () => {
    expect(waterDiffusionM2PerS(1, 25) / 2.3e-9).toBeCloseTo(0.83, 1);
    expect(Math.log10(waterDiffusionM2PerS(0.5, 25))).toBeCloseTo(-13.187, 3);
    expect(Math.log10(waterDiffusionM2PerS(0, 25))).toBeCloseTo(-15.65, 2);
  });
});
