import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { glassTransition } from './glass-transition.js';
import { viscosity } from './viscosity.js';
import { log10OfWlf, syrupWeight } from './viscosity-curves.js';

const sucrose = (drySolidsMassFraction: number): Mixture =>
  solutionOf('sucrose', { drySolidsMassFraction });

function log10PaS(of: Mixture, temperatureC: number): number {
  const answer = viscosity(of, { temperatureC });
  return isNone(answer) ? Number.NaN : Math.log10(answer.viscosityPaS);
}

function decades(of: Mixture, temperatureC: number): readonly [number, number] {
  const answer = viscosity(of, { temperatureC });
  if (isNone(answer)) return [Number.NaN, Number.NaN];
  const { viscosityPaS, band } = answer;
  return [Math.log10(viscosityPaS / band[0]), Math.log10(band[1] / viscosityPaS)];
}

describe('viscosity', () => {
  it('is that of water in water with next to nothing in it', () => {
    expect(10 ** log10PaS(sucrose(1e-6), 20)).toBeCloseTo(0.00097, 5);
  });

  it('follows the glass transition alone in candy mass', () => {
    const sweet = sucrose(0.98);
    const { glassTransitionC } = glassTransition(sweet);
    expect(log10PaS(sweet, glassTransitionC + 50)).toBeCloseTo(12 - (17.84 * 50) / 98.8, 9);
    expect(log10PaS(sweet, glassTransitionC)).toBeCloseTo(12, 6);
  });

  it('joins syrup and candy mass without a step', () => {
    for (const at of [0.74, 0.9]) {
      for (const temperatureC of [0, 60, 120]) {
        const below = log10PaS(sucrose(at - 1e-7), temperatureC);
        const above = log10PaS(sucrose(at + 1e-7), temperatureC);
        expect(Math.abs(above - below)).toBeLessThan(1e-4);
      }
    }
    expect(syrupWeight(0.82)).toBeCloseTo(0.5, 12);
  });

  it('makes a syrup of long chains thicker than one of sucrose, and invert thinner', () => {
    const of = (ingredient: 'maltodextrin' | 'fructose') =>
      mixture([
        { ingredient, massG: 70, drySolidsMassFraction: 1 },
        { ingredient: 'water', massG: 30 },
      ]);
    expect(log10PaS(of('maltodextrin'), 40)).toBeGreaterThan(log10PaS(sucrose(0.7), 40) + 0.3);
    expect(log10PaS(of('fructose'), 40)).toBeLessThan(log10PaS(sucrose(0.7), 40) - 0.1);
  });

  it('has no answer for glass', () => {
    const { glassTransitionC } = glassTransition(sucrose(0.98));
    const ask = (temperatureC: number) => viscosity(sucrose(0.98), { temperatureC });
    expect(ask(glassTransitionC - 1e-9)).toEqual({ kind: 'none', reason: 'glass' });
    expect(isNone(ask(glassTransitionC))).toBe(false);
  });

  it('warns of what nobody measured', () => {
    const about = (drySolids: number, temperatureC: number) => {
      const answer = viscosity(sucrose(drySolids), { temperatureC });
      return isNone(answer) ? answer.reason : answer.warnings.map(({ parameter }) => parameter);
    };
    expect(about(0.5, 0)).toEqual([]);
    expect(about(0.93, 100)).toEqual([]);
    expect(about(0.49, -0.1)).toEqual(['dissolvedMassFraction', 'temperatureC']);
    expect(about(0.98, 130)).toEqual(['dissolvedMassFraction', 'temperatureC']);
  });

  it.each([-20.1, 200.1, Number.NaN])('refuses %f °C', (temperatureC) => {
    expect(() => viscosity(sucrose(0.6), { temperatureC })).toThrow(
      expect.objectContaining({ parameter: 'temperatureC', limits: [-20, 200] }),
    );
  });
});

describe('the band of the viscosity', () => {
  it('is 15 % for a sucrose solution, half a decade more for another sugar', () => {
    const [below, above] = decades(sucrose(0.6), 20);
    expect(below).toBeCloseTo(0.06, 9);
    expect(above).toBeCloseTo(0.06, 9);
    expect(decades(solutionOf('maltose', { drySolidsMassFraction: 0.6 }), 20)[1]).toBeCloseTo(
      0.56,
      9,
    );
  });

  it('is 0.6 decades and what the glass transition may be wrong by in candy mass', () => {
    const sweet = sucrose(0.98);
    const { glassTransitionC } = glassTransition(sweet);
    const curve = [17.84, 48.8] as const;
    const thicker = log10OfWlf(46, curve) - log10OfWlf(50, curve);
    const thinner = log10OfWlf(50, curve) - log10OfWlf(54, curve);
    const [below, above] = decades(sweet, glassTransitionC + 50);
    expect(above).toBeCloseTo(Math.hypot(0.6, thicker), 9);
    expect(below).toBeCloseTo(Math.hypot(0.6, thinner), 9);
  });

  it('goes straight on through the glass transition', () => {
    const [, above] = decades(sucrose(0.98), glassTransition(sucrose(0.98)).glassTransitionC);
    expect(above).toBeCloseTo(Math.hypot(0.6, (17.84 * 4) / 48.8), 6);
  });
});
