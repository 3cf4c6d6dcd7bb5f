import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { sucroseSolubility } from './sucrose-solubility.js';
import { sucroseSupersaturation } from './supersaturation.js';

function doctored(sucroseG: number, syrupG: number, waterG: number): Mixture {
  return mixture([
    { ingredient: 'sucrose', massG: sucroseG },
    { ingredient: 'dried-glucose-syrup', massG: syrupG, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: waterG },
  ]);
}

function of(mass: Mixture, temperatureC = 25, equation?: 'long' | 'linear') {
  const result = sucroseSupersaturation(mass, { temperatureC, equation });
  if (isNone(result)) throw new Error(result.reason);
  return result;
}

describe('sucroseSupersaturation', () => {
  it('is 1 in the saturated solution', () => {
    const saturated = solutionOf('sucrose', {
      drySolidsMassFraction: sucroseSolubility(40).sucroseMassFraction,
    });
    expect(of(saturated, 40).supersaturation).toBeCloseTo(1, 12);
    expect(of(saturated, 41).zone).toBe('undersaturated');
  });

  it.each([
    [0.95, 'undersaturated'],
    [1.1, 'metastable'],
    [1.25, 'intermediate'],
    [1.35, 'labile'],
  ])('calls %f %s', (supersaturation, zone) => {
    const { sucroseMassFraction: w } = sucroseSolubility(25);
    const mass = mixture([
      { ingredient: 'sucrose', massG: (supersaturation * w) / (1 - w) },
      { ingredient: 'water', massG: 1 },
    ]);
    expect(of(mass).supersaturation).toBeCloseTo(supersaturation, 9);
    expect(of(mass).zone).toBe(zone);
  });

  it('is 3.2 in fondant syrup before it is beaten', () => {
    const { supersaturation, otherSolidsPerWater, clamped, warnings } = of(doctored(80, 20, 13.64));
    expect(supersaturation).toBeCloseTo(3.2, 1);
    expect(otherSolidsPerWater).toBeCloseTo(1.5, 1);
    expect(clamped).toBe(false);
    expect(warnings).toEqual([]);
  });

  it('is 14 in a boiled sweet, and says that it is run on', () => {
    const sweet = of(doctored(60, 40, 100 / 39));
    expect(sweet.supersaturation).toBeCloseTo(14.2, 1);
    expect(sweet.otherSolidsPerWater).toBeCloseTo(15.6, 9);
    expect(sweet.clamped).toBe(true);
    expect(sweet.warnings).toEqual([
      {
        code: 'outside-tested-range',
        parameter: 'otherSolidsPerWater',
        value: expect.closeTo(15.6, 9),
        limits: [0, 3],
      },
    ]);
    expect(of(doctored(60, 40, 100 / 39), 25, 'linear').supersaturation).toBeCloseTo(15.3, 1);
  });

  it('counts what is dissolved, not oil', () => {
    const oily = mixture([
      { ingredient: 'sucrose', massG: 75 },
      { ingredient: 'water', massG: 25 },
      { ingredient: 'flavour-oil', massG: 10 },
    ]);
    expect(of(oily)).toEqual(of(solutionOf('sucrose', { drySolidsMassFraction: 0.75 })));
  });

  it('is nothing without sucrose, and has no answer without water', () => {
    expect(of(solutionOf('glucose', { drySolidsMassFraction: 0.7 })).supersaturation).toBe(0);
    const dry = solutionOf('sucrose', { drySolidsMassFraction: 1 });
    expect(sucroseSupersaturation(dry, { temperatureC: 25 })).toEqual({
      kind: 'none',
      reason: 'no-water',
    });
  });

  it('refuses 101 °C and another equation', () => {
    const syrup = doctored(60, 40, 30);
    expect(() => of(syrup, 101)).toThrow(
      expect.objectContaining({ parameter: 'temperatureC', limits: [-13, 100] }),
    );
    expect(() => of(syrup, 25, 'short' as 'long')).toThrow(
      expect.objectContaining({ code: 'unknown-name', parameter: 'equation', received: 'short' }),
    );
  });
});
