import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import { relativeSweetness } from './relative-sweetness.js';

function sweet(sucrose: number, syrup: number) {
  return mixture([
    { ingredient: 'sucrose', massG: sucrose },
    { ingredient: 'dried-glucose-syrup', massG: syrup, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: 2 },
  ]);
}

describe('relativeSweetness', () => {
  it.each([
    [60, 40, 0.78, 0.7, 0.8],
    [70, 30, 0.84, 0.77, 0.85],
    [50, 50, 0.73, 0.62, 0.75],
  ])('of %i sugar and %i syrup of 42 DE is %f, from %f to %f', (a, b, middle, low, high) => {
    const result = relativeSweetness(sweet(a, b));
    expect(result.relativeSweetness).toBeCloseTo(middle, 2);
    expect(result.band[0]).toBeCloseTo(low, 2);
    expect(result.band[1]).toBeCloseTo(high, 2);
    expect(result.warnings).toEqual([]);
  });

  it('puts 75 isomalt with 25 xylitol at 0.61, from 0.51 to 0.76', () => {
    const { relativeSweetness: middle, band } = relativeSweetness(
      mixture([
        { ingredient: 'isomalt', massG: 75, drySolidsMassFraction: 1 },
        { ingredient: 'xylitol', massG: 25, drySolidsMassFraction: 1 },
      ]),
    );
    expect(middle).toBeCloseTo(0.6125, 9);
    expect(band[0]).toBeCloseTo(0.5125, 9);
    expect(band[1]).toBeCloseTo(0.7625, 9);
  });

  it('counts acid in the mass and gives it no sweetness', () => {
    const sour = mixture([
      { ingredient: 'sucrose', massG: 98 },
      { ingredient: 'citric-acid', massG: 2, drySolidsMassFraction: 1 },
    ]);
    expect(relativeSweetness(sour).relativeSweetness).toBeCloseTo(0.98, 12);
    expect(relativeSweetness(sour).warnings).toEqual([]);
  });

  it('leaves out what has no value and says so', () => {
    const flavoured = mixture([
      { ingredient: 'isomalt-dry', massG: 99, drySolidsMassFraction: 1 },
      { ingredient: 'flavour-propylene-glycol', massG: 1 },
    ]);
    const { relativeSweetness: middle, warnings } = relativeSweetness(flavoured);
    expect(middle).toBeCloseTo(0.495, 9);
    expect(warnings).toEqual([
      {
        code: 'species-not-modelled',
        parameter: 'shareOfDrySolids',
        value: expect.closeTo(0.009, 12),
        limits: [0, 0],
        subject: 'propylene-glycol',
      },
    ]);
  });

  it('lets fructose fade in a warm mouth', () => {
    const fructose = solutionOf('fructose', { drySolidsMassFraction: 0.1 });
    expect(relativeSweetness(fructose).relativeSweetness).toBe(1.2);
    const mouth = relativeSweetness(fructose, { tastingTemperatureC: 37 });
    expect(mouth.relativeSweetness).toBeCloseTo(1.03, 2);
    expect(mouth.band[0]).toBeCloseTo(mouth.relativeSweetness / 1.2, 12);
    expect(mouth.band[1]).toBeCloseTo((mouth.relativeSweetness * 1.8) / 1.2, 12);
  });

  it('leaves other sugars as sweet in a warm mouth', () => {
    for (const species of ['sucrose', 'glucose', 'xylitol'] as const) {
      const sugar = solutionOf(species, { drySolidsMassFraction: 0.1 });
      expect(relativeSweetness(sugar, { tastingTemperatureC: 37 })).toEqual(
        relativeSweetness(sugar),
      );
    }
  });

  it.each([
    [0, 'below'],
    [70, 'above'],
  ])('warns at %i °C, %s the printed points of fructose', (tastingTemperatureC) => {
    const fructose = solutionOf('fructose', { drySolidsMassFraction: 0.1 });
    expect(relativeSweetness(fructose, { tastingTemperatureC }).warnings).toEqual([
      {
        code: 'outside-tested-range',
        parameter: 'tastingTemperatureC',
        value: tastingTemperatureC,
        limits: [5, 60],
      },
    ]);
  });

  it('keeps the middle of every syrup inside its band', () => {
    for (let dextroseEquivalent = 1; dextroseEquivalent <= 100; dextroseEquivalent++) {
      const syrup = mixture([{ ingredient: 'glucose-syrup', massG: 1, dextroseEquivalent }]);
      const { relativeSweetness: middle, band } = relativeSweetness(syrup);
      expect(band[0]).toBeLessThanOrEqual(middle);
      expect(band[1]).toBeGreaterThanOrEqual(middle);
    }
  });

  it('lets glucose gain with strength, and no other sugar', () => {
    const sweet = (species: 'glucose' | 'sucrose' | 'fructose') =>
      solutionOf(species, { drySolidsMassFraction: 0.1 });
    const strong = { sucroseEquivalencePercent: 20 };
    expect(relativeSweetness(sweet('glucose'), strong).relativeSweetness).toBeCloseTo(0.906, 3);
    for (const species of ['sucrose', 'fructose'] as const) {
      expect(relativeSweetness(sweet(species), strong)).toEqual(relativeSweetness(sweet(species)));
    }
  });

  it.each([
    ['sucroseEquivalencePercent', 9, [10, 30]],
    ['sucroseEquivalencePercent', 31, [10, 30]],
    ['tastingConcentrationGPer100Ml', 4, [5, 15]],
    ['tastingConcentrationGPer100Ml', 16, [5, 15]],
  ])('warns with %s at %f', (parameter, value, limits) => {
    const sugar = solutionOf('sucrose', { drySolidsMassFraction: 0.1 });
    expect(relativeSweetness(sugar, { [parameter]: value }).warnings).toEqual([
      { code: 'outside-tested-range', parameter, value, limits },
    ]);
  });

  it.each([
    ['sucroseEquivalencePercent', -0.1, [0, 60]],
    ['sucroseEquivalencePercent', 61, [0, 60]],
    ['tastingConcentrationGPer100Ml', 0.4, [0.5, 50]],
    ['tastingConcentrationGPer100Ml', 51, [0.5, 50]],
  ])('refuses %s of %f', (parameter, received, limits) => {
    const sugar = solutionOf('sucrose', { drySolidsMassFraction: 0.1 });
    expect(() => relativeSweetness(sugar, { [parameter]: received })).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter, received, limits }),
    );
  });

  it('refuses plain water and a mouth of ice', () => {
    const water = solutionOf('sucrose', { drySolidsMassFraction: 0 });
    expect(() => relativeSweetness(water)).toThrow(ModelRangeError);
    expect(() => relativeSweetness(water)).toThrow(
      expect.objectContaining({
        code: 'outside-range',
        parameter: 'drySolidsMassFraction',
        received: 0,
        message: expect.stringContaining('Water alone'),
      }),
    );
    const sugar = solutionOf('sucrose', { drySolidsMassFraction: 1 });
    for (const tastingTemperatureC of [-5, 100.1]) {
      expect(() => relativeSweetness(sugar, { tastingTemperatureC })).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'tastingTemperatureC',
          received: tastingTemperatureC,
          limits: [0, 100],
        }),
      );
    }
  });
});
