import { describe, expect, it } from 'vitest';
import type { Ingredient } from '../ingredients/types.js';
import { combine, scaleMixture } from './combine.js';
import { evaporateTo } from './evaporate-to.js';
import { mixture } from './mixture.js';
import { solutionOf } from './solution-of.js';

const own = (solids: Ingredient['solids'], apart: Ingredient['apart'] = {}): Ingredient => ({
  kind: 'sugar',
  drySolidsMassFraction: { value: 0.5, source: 'assumption', grade: 'assumed' },
  solids: solids ?? {},
  apart,
  compositionGrade: 'assumed',
});
const sugar = { ingredient: 'sucrose', massG: 1 } as const;
const syrup = { ingredient: 'glucose-syrup', massG: 1 } as const;
const glucose = { dp1: 1, dp2: 0, dp3: 0, dp4plus: 0 };
const weightless = {
  code: 'outside-range',
  parameter: 'massG',
  received: 0,
  limits: [0, Infinity],
  message: 'A mixture must weigh something; received 0 g.',
};

describe('a number no mixture can mean', () => {
  it.each([
    ['massG', -1, [0, 1_000_000_000], () => mixture([{ ...sugar, massG: -1 }])],
    [
      'massG',
      1_000_000_001,
      [0, 1_000_000_000],
      () => mixture([{ ...sugar, massG: 1_000_000_001 }]),
    ],
    [
      'drySolidsMassFraction',
      -0.1,
      [0, 1],
      () => mixture([{ ...sugar, drySolidsMassFraction: -0.1 }]),
    ],
    ['drySolidsMassFraction', 80, [0, 1], () => mixture([{ ...syrup, drySolidsMassFraction: 80 }])],
    ['dextroseEquivalent', 0.9, [1, 100], () => mixture([{ ...syrup, dextroseEquivalent: 0.9 }])],
    ['dextroseEquivalent', 101, [1, 100], () => mixture([{ ...syrup, dextroseEquivalent: 101 }])],
    [
      'dextroseEquivalent',
      101,
      [1, 100],
      () => mixture([{ ...syrup, profile: glucose, dextroseEquivalent: 101 }]),
    ],
    [
      'sumOfProfile',
      0.5,
      [1 - 1e-6, 1 + 1e-6],
      () => mixture([{ ...syrup, profile: { ...glucose, dp1: 0.5 } }]),
    ],
    [
      'sumOfProfile',
      1.5,
      [1 - 1e-6, 1 + 1e-6],
      () => mixture([{ ...syrup, profile: { ...glucose, dp4plus: 0.5 } }]),
    ],
    ['sumOfShares', 0, [1 - 1e-6, 1 + 1e-6], () => mixture([{ ...sugar, ingredient: own({}) }])],
    [
      'sumOfShares',
      1.5,
      [1 - 1e-6, 1 + 1e-6],
      () => mixture([{ ...sugar, ingredient: own({ sucrose: 1 }, { fat: 0.5 }) }]),
    ],
    ['sucrose', 1.5, [0, 1], () => mixture([{ ...sugar, ingredient: own({ sucrose: 1.5 }) }])],
    [
      'fat',
      -0.5,
      [0, 1],
      () => mixture([{ ...sugar, ingredient: own({ sucrose: 1 }, { fat: -0.5 }) }]),
    ],
    [
      'drySolidsMassFraction',
      -0.1,
      [0, 1],
      () => solutionOf('sucrose', { drySolidsMassFraction: -0.1 }),
    ],
    [
      'drySolidsMassFraction',
      1.1,
      [0, 1],
      () => solutionOf('sucrose', { drySolidsMassFraction: 1.1 }),
    ],
    ['factor', -1, [0, 1_000_000_000], () => scaleMixture(mixture([sugar]), -1)],
    [
      'factor',
      1_000_000_001,
      [0, 1_000_000_000],
      () => scaleMixture(mixture([sugar]), 1_000_000_001),
    ],
  ])('is a %s of %d', (parameter, received, limits, ask) => {
    expect(ask).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter, received, limits }),
    );
  });

  it('is a mass of nothing, however it comes about', () => {
    expect(() => mixture([])).toThrow(expect.objectContaining(weightless));
    expect(() => mixture([{ ...sugar, massG: 0 }])).toThrow(expect.objectContaining(weightless));
    expect(() => combine([])).toThrow(expect.objectContaining(weightless));
    expect(() => scaleMixture(mixture([sugar]), 0)).toThrow(expect.objectContaining(weightless));
  });

  it('is a word for starch syrup beside anything else', () => {
    for (const [parameter, received] of [
      ['dextroseEquivalent', 42],
      ['conversion', 'acid'],
      ['profile', glucose],
    ] as const) {
      for (const [ingredient, named] of [
        ['sucrose', 'sucrose'],
        [own({ sucrose: 1 }), 'an ingredient of your own'],
      ] as const) {
        expect(() => mixture([{ ingredient, massG: 1, [parameter]: received }])).toThrow(
          expect.objectContaining({
            code: 'not-allowed-together',
            parameter,
            received,
            message: `${parameter} belongs to starch syrups only; received it for ${named}.`,
          }),
        );
      }
    }
  });

  it('is more water than there is, or sugar out of water', () => {
    const from = solutionOf('sucrose', { drySolidsMassFraction: 0.75 });
    const water = solutionOf('sucrose', { drySolidsMassFraction: 0 });
    for (const [mass, received, limits] of [
      [from, 0.7, [expect.closeTo(0.75, 9), 1]],
      [from, 1.01, [expect.closeTo(0.75, 9), 1]],
      [water, 0.5, [0, 0]],
    ] as const) {
      expect(() => evaporateTo(mass, { drySolidsMassFraction: received })).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'drySolidsMassFraction',
          received,
          limits,
        }),
      );
    }
  });
});

describe('the ends of what a mixture can mean', () => {
  it('may be a thousand tonnes, and hold weighed nothings', () => {
    const mass = mixture([
      { ingredient: 'sucrose', massG: 1_000_000_000 },
      { ingredient: 'glucose', massG: 0 },
      { ingredient: 'butter', massG: 0 },
    ]);
    expect(mass.massG).toBe(1_000_000_000);
    expect(mass.solids).toHaveLength(1);
    expect(mass.apart).toEqual([]);
  });

  it('is water alone or sugar alone', () => {
    expect(solutionOf('sucrose', { drySolidsMassFraction: 0 })).toEqual({
      waterG: 100,
      solids: [],
      apart: [],
      massG: 100,
      drySolidsMassFraction: 0,
      dissolvedMassFraction: 0,
    });
    expect(solutionOf('sucrose', { drySolidsMassFraction: 1 })).toEqual({
      waterG: 0,
      solids: [{ kind: 'pure', species: 'sucrose', massG: 100 }],
      apart: [],
      massG: 100,
      drySolidsMassFraction: 1,
      dissolvedMassFraction: 1,
    });
  });

  it('lets water be boiled to itself, and forgives the last digit', () => {
    const water = solutionOf('sucrose', { drySolidsMassFraction: 0 });
    expect(evaporateTo(water, { drySolidsMassFraction: 0 })).toBe(water);
    const from = solutionOf('sucrose', { drySolidsMassFraction: 0.75 });
    expect(evaporateTo(from, { drySolidsMassFraction: 0.75 * (1 - 5e-13) })).toBe(from);
  });

  it('takes shares and chains rounded in the sixth digit', () => {
    const rounded = own({ sucrose: 0.333333, glucose: 0.333333 }, { fat: 0.333333 });
    expect(mixture([{ ingredient: rounded, massG: 1 }]).solids).toHaveLength(2);
    const profile = { dp1: 0.333333, dp2: 0.333333, dp3: 0.333333, dp4plus: 0 };
    expect(mixture([{ ...syrup, profile }]).solids).toMatchObject([{ given: 'profile' }]);
  });
});

describe('what a mixture adds up', () => {
  it('merges fat from two ingredients in the order it first appears', () => {
    const { apart } = mixture([
      { ingredient: 'flavour-oil', massG: 1 },
      { ingredient: 'butter', massG: 100 },
      { ingredient: 'cream', massG: 100 },
      { ingredient: 'flavour-oil', massG: 2 },
    ]);
    expect(apart).toEqual([
      { kind: 'oil', massG: 3 },
      { kind: 'fat', massG: expect.closeTo(84 * 0.965 + 42 * 0.857, 9) },
    ]);
  });

  it('keeps what stays apart through the boil and the pan', () => {
    const buttery = mixture([
      { ingredient: 'sucrose', massG: 50 },
      { ingredient: 'water', massG: 50 },
      { ingredient: 'butter', massG: 10 },
    ]);
    const dry = evaporateTo(buttery, { drySolidsMassFraction: 0.9 });
    expect(dry.apart).toEqual(buttery.apart);
    // 50 g of sugar and 8.4 g of butter solids in nine tenths of the mass.
    expect(dry.massG).toBeCloseTo(58.4 / 0.9, 9);
    const both = combine([buttery, dry]);
    expect(both.apart[0]?.massG).toBeCloseTo(2 * 8.4 * 0.965, 9);
    const tenfold = scaleMixture(buttery, 10);
    expect(tenfold.waterG).toBeCloseTo(10 * 51.6, 9);
    expect(tenfold.drySolidsMassFraction).toBeCloseTo(58.4 / 110, 12);
    expect(tenfold.solids[0]).toEqual({ kind: 'pure', species: 'sucrose', massG: 500 });
  });
});
