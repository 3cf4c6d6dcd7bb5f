import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import { dissolutionHeat, evaporationHeat } from './phase-heat.js';
import { specificHeat, sucroseCrystalSpecificHeat } from './specific-heat.js';

describe('specificHeat', () => {
  it.each([
    [85, 140, 0.1],
    [90, 120, 0.1],
    [90.01, 120, 0.15],
    [100, 20, 0.15],
  ])('is known at %f Brix and %f °C within a share of %f', (brix, temperatureC, share) => {
    const { specificHeatKJPerKgK: value, band } = specificHeat({ brix, temperatureC });
    expect(band[0]).toBeCloseTo(value * (1 - share), 12);
    expect(band[1]).toBeCloseTo(value * (1 + share), 12);
  });

  it('is led from the law to the melt without a step', () => {
    const at = (brix: number) => specificHeat({ brix, temperatureC: 140 }).specificHeatKJPerKgK;
    expect(at(85)).toBeCloseTo(4.1868 + 85 * (-0.0297 + 0.0046 + 0.0105), 12);
    expect(at(85 + 1e-9)).toBeCloseTo(at(85), 8);
    expect(at(98 - 1e-9)).toBeCloseTo(2, 8);
    expect(at(99)).toBe(2);
    // Worked out by hand in the notes the model was made from.
    expect(at(95)).toBeCloseTo(2.18, 2);
  });

  it('falls with purity: glucose syrup takes less than sugar', () => {
    const at = (purity: number) => specificHeat({ brix: 80, temperatureC: 60, purity });
    expect(at(40).specificHeatKJPerKgK).toBeCloseTo(at(100).specificHeatKJPerKgK - 0.2208, 9);
  });

  it.each([
    [{ brix: 101, temperatureC: 20 }],
    [{ brix: Number.NaN, temperatureC: 20 }],
    [{ brix: 50, temperatureC: 251 }],
    [{ brix: 50, temperatureC: 20, purity: -1 }],
  ])('refuses %o', (input) => {
    expect(() => specificHeat(input)).toThrow(ModelRangeError);
  });
});

describe('sucroseCrystalSpecificHeat', () => {
  it('is 1.351 at 50 °C', () => {
    expect(sucroseCrystalSpecificHeat(50).specificHeatKJPerKgK).toBeCloseTo(1.351, 3);
  });

  it.each([Number.NaN, -1, 101])('refuses %f °C', (temperatureC) => {
    expect(() => sucroseCrystalSpecificHeat(temperatureC)).toThrow(ModelRangeError);
  });
});

describe('evaporationHeat', () => {
  it.each([100, 120, 140, 150])('lies at %i °C on the line drawn for one atmosphere', (atC) => {
    const { evaporationHeatKJPerKg } = evaporationHeat({ temperatureC: atC });
    expect(Math.abs(evaporationHeatKJPerKg - (2_257 - 2.2 * (atC - 100)))).toBeLessThan(1);
  });

  it('moves by under one part in a hundred for a kilometre of height', () => {
    const low = evaporationHeat({ temperatureC: 130 }).evaporationHeatKJPerKg;
    const high = evaporationHeat({ temperatureC: 130, pressurePa: 89_875 });
    expect(Math.abs(high.evaporationHeatKJPerKg / low - 1)).toBeLessThan(0.01);
  });

  it('is not asked where water does not boil', () => {
    expect(() => evaporationHeat({ temperatureC: 99 })).toThrow(ModelRangeError);
    expect(() => evaporationHeat({ temperatureC: 99, pressurePa: 90_000 })).not.toThrow();
    expect(() => evaporationHeat({ temperatureC: 120, pressurePa: 500 })).toThrow(ModelRangeError);
  });
});

describe('dissolutionHeat', () => {
  it('is 18 kJ for a kilogram of sucrose and 153 for xylitol', () => {
    const kilogram = (ingredient: 'sucrose' | 'xylitol') =>
      dissolutionHeat(mixture([{ ingredient, massG: 1_000, drySolidsMassFraction: 1 }]))
        .dissolutionHeatKJ;
    expect(kilogram('sucrose')).toBeCloseTo(18.14, 2);
    expect(kilogram('xylitol')).toBeCloseTo(152.95, 2);
  });

  it('counts nothing else', () => {
    const syrup = mixture([{ ingredient: 'glucose-syrup', massG: 1_000 }]);
    expect(dissolutionHeat(syrup).dissolutionHeatKJ).toBe(0);
    const isomalt = solutionOf('isomalt', { drySolidsMassFraction: 0.7 });
    expect(dissolutionHeat(isomalt).dissolutionHeatKJ).toBe(0);
  });
});
