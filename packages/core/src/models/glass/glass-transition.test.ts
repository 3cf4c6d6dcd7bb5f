import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { combine } from '../../matter/mixture/combine.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { dryGlassTransition, glassTransition } from './glass-transition.js';

/** 60 sucrose : 40 syrup solids of DE 42, at some water. */
function boiledSweet(waterMassFraction: number): Mixture {
  const dryG = 100 * (1 - waterMassFraction);
  return mixture([
    { ingredient: 'sucrose', massG: 0.6 * dryG },
    { ingredient: 'dried-glucose-syrup', massG: 0.4 * dryG, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: 100 * waterMassFraction },
  ]);
}

function isomalt(waterMassFraction: number): Mixture {
  return solutionOf('isomalt', { drySolidsMassFraction: 1 - waterMassFraction });
}

function halfWidthK({ band: [low, high] }: { readonly band: readonly [number, number] }): number {
  return (high - low) / 2;
}

describe('glassTransition', () => {
  it('gives a 60:40 sweet at 2 % water 52 °C', () => {
    expect(glassTransition(boiledSweet(0.02)).glassTransitionC).toBeCloseTo(52.26, 2);
  });

  it('reads the dry sugar where there is no water', () => {
    expect(glassTransition(isomalt(0)).glassTransitionC).toBeCloseTo(62, 9);
    expect(dryGlassTransition(isomalt(0.1)).glassTransitionC).toBeCloseTo(62, 9);
  });

  it('leaves out what has no glass transition, and says how much that is', () => {
    const salted = mixture([
      { ingredient: 'sucrose', massG: 99 },
      { ingredient: 'salt', massG: 1 },
    ]);
    const { glassTransitionC, warnings } = glassTransition(salted);
    expect(glassTransitionC).toBeCloseTo(62, 9);
    expect(warnings).toEqual([
      {
        code: 'species-not-modelled',
        parameter: 'shareOfDissolvedSolids',
        value: 0.01,
        limits: [0, 0],
        subject: 'sodium-chloride',
      },
    ]);
  });

  it('takes no notice of oil and fat', () => {
    const plain = boiledSweet(0.02);
    const oiled = combine([plain, mixture([{ ingredient: 'flavour-oil', massG: 5 }])]);
    expect(glassTransition(oiled)).toEqual(glassTransition(plain));
  });

  it('does not change when a mass is blended with itself', () => {
    const once = glassTransition(boiledSweet(0.03));
    const twice = glassTransition(combine([boiledSweet(0.03), boiledSweet(0.03)]));
    expect(twice.glassTransitionC).toBeCloseTo(once.glassTransitionC, 9);
    expect(halfWidthK(twice)).toBeCloseTo(halfWidthK(once), 9);
  });

  it('warns of a syrup and of maltodextrin beyond print', () => {
    expect(glassTransition(boiledSweet(0.2)).warnings[0]?.parameter).toBe('waterMassFraction');
    const odd = mixture([{ ingredient: 'maltodextrin', massG: 1, dextroseEquivalent: 3 }]);
    expect(glassTransition(odd).warnings[0]?.parameter).toBe('dextroseEquivalent');
  });

  it('refuses a mass without any glass former', () => {
    const brine = mixture([
      { ingredient: 'salt', massG: 1 },
      { ingredient: 'water', massG: 9 },
    ]);
    for (const of of [glassTransition, dryGlassTransition]) {
      expect(() => of(brine)).toThrow(ModelRangeError);
      expect(() => of(brine)).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'solids',
          received: brine.solids,
          message: expect.stringContaining('known glass transition'),
        }),
      );
    }
  });
});

describe('the band of the glass transition', () => {
  it('is 4 K for one sugar, wet or dry', () => {
    expect(
      halfWidthK(glassTransition(solutionOf('sucrose', { drySolidsMassFraction: 0.97 }))),
    ).toBeCloseTo(4, 9);
    expect(
      halfWidthK(dryGlassTransition(solutionOf('glucose', { drySolidsMassFraction: 0.9 }))),
    ).toBeCloseTo(4, 9);
  });

  it('is 5 K for a dry mixture of two', () => {
    const two = mixture([
      { ingredient: 'sucrose', massG: 1 },
      { ingredient: 'glucose', massG: 1 },
    ]);
    expect(halfWidthK(dryGlassTransition(two))).toBeCloseTo(5, 9);
  });

  it('is 8 K for a boiled sweet with its water, isomalt included', () => {
    expect(halfWidthK(glassTransition(boiledSweet(0.02)))).toBeCloseTo(8, 9);
    expect(halfWidthK(glassTransition(isomalt(0.015)))).toBeCloseTo(8, 9);
  });

  it('narrows towards the dry sweet without a jump', () => {
    expect(halfWidthK(glassTransition(isomalt(0.005)))).toBeCloseTo(6.5, 6);
    expect(halfWidthK(glassTransition(isomalt(0)))).toBeCloseTo(5, 9);
  });

  it('counts two syrups as one substance beside the sugar', () => {
    const sugar = { ingredient: 'sucrose', massG: 95 } as const;
    const syrup = (massG: number) =>
      ({ ingredient: 'dried-glucose-syrup', massG, drySolidsMassFraction: 1 }) as const;
    // 0.95² + 0.05² of 1 is alike; 0.18 apart is a full mixture, and that adds 1 K to 4.
    const expectedK = 4 + 0.095 / 0.18;
    expect(halfWidthK(dryGlassTransition(mixture([sugar, syrup(5)])))).toBeCloseTo(expectedK, 9);
    expect(halfWidthK(dryGlassTransition(mixture([sugar, syrup(2), syrup(3)])))).toBeCloseTo(
      expectedK,
      9,
    );
  });

  it('is wide where a part is badly known', () => {
    const inulin = mixture([{ ingredient: 'inulin', massG: 1, drySolidsMassFraction: 1 }]);
    expect(halfWidthK(glassTransition(inulin))).toBeCloseTo(25, 9);
  });
});
