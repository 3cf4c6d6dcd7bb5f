import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import type { Ingredient } from '../ingredients/types.js';
import { combine, scaleMixture } from './combine.js';
import { evaporateTo } from './evaporate-to.js';
import { mixture } from './mixture.js';
import { solutionOf } from './solution-of.js';

const own: Ingredient = {
  kind: 'sugar',
  drySolidsMassFraction: { value: 0.5, source: 'assumption', grade: 'assumed' },
  solids: { sucrose: 0.6, fructose: 0.3 },
  apart: { insoluble: 0.1 },
  compositionGrade: 'assumed',
};

describe('mixture', () => {
  it('counts water, sugar and syrup', () => {
    const mass = mixture([
      { ingredient: 'sucrose', massG: 300 },
      { ingredient: 'glucose-syrup', massG: 250 },
      { ingredient: 'water', massG: 100 },
    ]);
    expect(mass.waterG).toBeCloseTo(150, 9);
    expect(mass.massG).toBeCloseTo(650, 9);
    expect(mass.drySolidsMassFraction).toBeCloseTo(500 / 650, 12);
    expect(mass.dissolvedMassFraction).toBeCloseTo(500 / 650, 12);
    expect(mass.solids.map((solid) => solid.kind)).toEqual(['pure', 'saccharides']);
  });

  it('merges one sugar from two sources in the order it first appears', () => {
    const { solids } = mixture([
      { ingredient: 'glucose', massG: 10 },
      { ingredient: 'sucrose', massG: 10 },
      { ingredient: 'dextrose-monohydrate', massG: 10 },
    ]);
    expect(solids).toEqual([
      { kind: 'pure', species: 'glucose', massG: 10 + 9.091 },
      { kind: 'pure', species: 'sucrose', massG: 10 },
    ]);
  });

  it('never merges two syrups, alike as they may be', () => {
    const syrup = { ingredient: 'glucose-syrup', massG: 100 } as const;
    expect(mixture([syrup, syrup]).solids).toHaveLength(2);
  });

  it('keeps fat, alcohol and oil out of the solution', () => {
    const { apart, dissolvedMassFraction, drySolidsMassFraction } = mixture([
      { ingredient: 'sucrose', massG: 80 },
      { ingredient: 'water', massG: 16 },
      { ingredient: 'flavour-alcohol', massG: 10 },
    ]);
    expect(apart[0]?.kind).toBe('ethanol');
    expect(apart[0]?.massG).toBeCloseTo(5.5, 12);
    expect(apart[1]?.massG).toBeCloseTo(0.5, 12);
    expect(dissolvedMassFraction).toBeCloseTo(0.8, 12);
    expect(drySolidsMassFraction).toBeCloseTo(86 / 106, 12);
  });

  it('gives fat alone no solution', () => {
    const { dissolvedMassFraction } = mixture([
      {
        ingredient: { ...own, solids: {}, apart: { fat: 1 } },
        massG: 10,
        drySolidsMassFraction: 1,
      },
    ]);
    expect(dissolvedMassFraction).toBe(0);
  });

  it('takes an ingredient of the cook', () => {
    const { solids, apart, waterG } = mixture([{ ingredient: own, massG: 100 }]);
    expect(waterG).toBe(50);
    expect(solids.map((solid) => solid.massG)).toEqual([30, 15]);
    expect(apart).toEqual([{ kind: 'insoluble', massG: 5 }]);
  });
});

describe('the solids of a starch syrup', () => {
  const solid = (part: object) =>
    mixture([{ ingredient: 'glucose-syrup', massG: 100, ...part }]).solids[0];
  const profile = { dp1: 0.36, dp2: 0.2, dp3: 0.13, dp4plus: 0.31 };

  it('are 42 DE and known by that alone when the cook says nothing', () => {
    expect(solid({})).toMatchObject({ massG: 80, dextroseEquivalent: 42, given: 'de' });
  });

  it('are known by the dextrose equivalent alone when only that is given', () => {
    expect(solid({ dextroseEquivalent: 60 })).toMatchObject({
      dextroseEquivalent: 60,
      given: 'de',
    });
  });

  it('are known by their chains when the conversion is given', () => {
    expect(solid({ conversion: 'high-maltose', dextroseEquivalent: 43 })).toMatchObject({
      given: 'profile',
      dextroseEquivalent: 43,
    });
  });

  it('take the dextrose equivalent from a profile, unless both are given', () => {
    const found = solid({ profile });
    expect(found).toMatchObject({ given: 'profile', profile });
    expect(found?.kind === 'saccharides' && found.dextroseEquivalent).toBeCloseTo(60, 0);
    expect(solid({ profile, dextroseEquivalent: 58 })).toMatchObject({ dextroseEquivalent: 58 });
  });

  it('have the chains their conversion leaves', () => {
    expect(solid({ conversion: 'high-maltose', dextroseEquivalent: 43 })).toMatchObject({
      profile: { dp1: 0.055, dp2: 0.462, dp3: 0.123, dp4plus: 0.36 },
    });
    expect(solid({})).toMatchObject({ profile: { dp1: 0.185, dp2: 0.139 } });
  });

  it('are taken for cut by acid, unless the ingredient or the cook knows better', () => {
    const enzymeCut: Ingredient = {
      kind: 'starch-syrup',
      drySolidsMassFraction: { value: 0.8, source: 'assumption', grade: 'assumed' },
      dextroseEquivalent: { value: 60, source: 'assumption', grade: 'assumed' },
      conversion: 'enzyme',
      compositionGrade: 'assumed',
    };
    // 52.735 of short chains; of 31 % of long ones acid makes a little more than enzymes do.
    const [acid, enzyme] = [55.215 / 0.9194, 52.735 + 4.03];
    for (const [part, expected] of [
      [{ profile }, acid],
      [{ profile, ingredient: 'maltodextrin' }, acid],
      [{ profile, conversion: 'enzyme' }, enzyme],
      [{ profile, ingredient: enzymeCut }, enzyme],
      [{ profile, ingredient: enzymeCut, conversion: 'acid' }, acid],
    ] as const) {
      expect(solid(part)).toMatchObject({ dextroseEquivalent: expect.closeTo(expected, 9) });
    }
  });
});

describe('what a mixture refuses', () => {
  const wrong: Readonly<Record<string, Parameters<typeof mixture>[0]>> = {
    nothing: [],
    'no mass': [{ ingredient: 'sucrose', massG: 0 }],
    'less than no mass': [{ ingredient: 'sucrose', massG: -1 }],
    'a percentage': [{ ingredient: 'glucose-syrup', massG: 1, drySolidsMassFraction: 80 }],
    'DE of sugar': [{ ingredient: 'sucrose', massG: 1, dextroseEquivalent: 42 }],
    'a cut of sugar': [{ ingredient: 'sucrose', massG: 1, conversion: 'acid' }],
    'chains of sugar': [
      { ingredient: own, massG: 1, profile: { dp1: 1, dp2: 0, dp3: 0, dp4plus: 0 } },
    ],
    'DE over 100': [{ ingredient: 'glucose-syrup', massG: 1, dextroseEquivalent: 101 }],
    'half a profile': [
      {
        ingredient: 'glucose-syrup',
        massG: 1,
        profile: { dp1: 0.5, dp2: 0, dp3: 0, dp4plus: 0.499 },
      },
    ],
    'dry water': [{ ingredient: 'water', massG: 1, drySolidsMassFraction: 0.1 }],
    'shares that do not add up': [{ ingredient: { ...own, solids: { sucrose: 0.5 } }, massG: 1 }],
  };
  it.each(Object.keys(wrong))('is %s', (name) => {
    expect(() => mixture(wrong[name] ?? [])).toThrow(ModelRangeError);
  });
});

describe('evaporateTo', () => {
  const syrup = () => solutionOf('sucrose', { drySolidsMassFraction: 0.75 });

  it('takes water and nothing else', () => {
    const dry = evaporateTo(syrup(), { drySolidsMassFraction: 0.975 });
    expect(dry.solids).toEqual(syrup().solids);
    expect(dry.drySolidsMassFraction).toBeCloseTo(0.975, 12);
    expect(evaporateTo(syrup(), { drySolidsMassFraction: 1 }).waterG).toBe(0);
  });

  it('leaves a mixture alone that is there already', () => {
    const from = syrup();
    const there = { drySolidsMassFraction: from.drySolidsMassFraction };
    expect(evaporateTo(from, there)).toBe(from);
  });

  it('adds no water, and makes no sugar of water', () => {
    expect(() => evaporateTo(syrup(), { drySolidsMassFraction: 0.7 })).toThrow(ModelRangeError);
    const water = solutionOf('sucrose', { drySolidsMassFraction: 0 });
    expect(() => evaporateTo(water, { drySolidsMassFraction: 0.5 })).toThrow(ModelRangeError);
  });
});

describe('combine and scaleMixture', () => {
  it('put acid into a base', () => {
    const base = mixture([
      { ingredient: 'sucrose', massG: 98 },
      { ingredient: 'water', massG: 2 },
    ]);
    const late = mixture([{ ingredient: 'citric-acid-monohydrate', massG: 10 }]);
    const whole = combine([base, late]);
    expect(whole.massG).toBeCloseTo(110, 12);
    expect(whole.waterG).toBeCloseTo(2.857, 12);
  });

  it('scale every mass', () => {
    const twice = scaleMixture(mixture([{ ingredient: 'butter', massG: 10 }]), 2);
    expect(twice.massG).toBeCloseTo(20, 12);
    expect(twice.apart[0]?.massG).toBeCloseTo(2 * 8.4 * 0.965, 12);
  });

  it('refuse nothing at all', () => {
    expect(() => combine([])).toThrow(ModelRangeError);
    const some = solutionOf('sucrose', { drySolidsMassFraction: 0.5 });
    expect(() => scaleMixture(some, 0)).toThrow(ModelRangeError);
    expect(() => scaleMixture(some, Number.NaN)).toThrow(ModelRangeError);
  });
});
