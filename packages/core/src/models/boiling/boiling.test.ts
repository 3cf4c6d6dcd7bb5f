import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import type { Apart, Mixture, Solid } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';
import { boilingPoint, cookTarget, drySolidsAtBoil, waterActivity } from './index.js';

const pure = (species: SpeciesId, massG: number): Solid => ({ kind: 'pure', species, massG });

/** A mass of these solids with this much water and these things apart. */
function massOf(solids: readonly Solid[], waterG: number, apart: readonly Apart[] = []): Mixture {
  const total = (parts: readonly { massG: number }[]) =>
    parts.reduce((sum, part) => sum + part.massG, 0);
  const dissolvedG = total(solids);
  const dryG = dissolvedG + total(apart);
  const solutionG = dissolvedG + waterG;
  return {
    waterG,
    solids,
    apart,
    massG: waterG + dryG,
    drySolidsMassFraction: dryG / (waterG + dryG),
    dissolvedMassFraction: solutionG > 0 ? dissolvedG / solutionG : 0,
  };
}

const sucrose = (dissolved: number): Mixture =>
  massOf([pure('sucrose', 100 * dissolved)], 100 * (1 - dissolved));

const syrup42: Solid = {
  kind: 'saccharides',
  massG: 100,
  dextroseEquivalent: 42,
  profile: { dp1: 0.185, dp2: 0.139, dp3: 0.116, dp4plus: 0.56 },
  given: 'de',
};

/** Half the width of a band about its middle. */
const halfWidth = ([low, high]: readonly [number, number]): number => (high - low) / 2;

describe('boilingPoint', () => {
  it('of water is that of water', () => {
    const { boilingPointC, boilingPointElevationK, warnings } = boilingPoint(massOf([], 100));
    expect(boilingPointC).toBeCloseTo(99.974, 3);
    expect(boilingPointElevationK).toBe(0);
    expect(warnings).toEqual([]);
  });

  it('leaves fat and alcohol out', () => {
    const plain = boilingPoint(sucrose(0.8));
    const rich = massOf([pure('sucrose', 80)], 20, [
      { kind: 'fat', massG: 30 },
      { kind: 'ethanol', massG: 5 },
    ]);
    expect(boilingPoint(rich).boilingPointC).toBe(plain.boilingPointC);
  });

  it('refuses a mass without water, and one too dry to boil at all', () => {
    for (const dry of [
      massOf([pure('sucrose', 100)], 0),
      massOf([], 0, [{ kind: 'oil', massG: 10 }]),
      sucrose(0.99999),
    ]) {
      expect(() => boilingPoint(dry)).toThrow(ModelRangeError);
    }
  });

  it('refuses pressures that are none', () => {
    for (const pressurePa of [760, -1, Number.NaN]) {
      expect(() => boilingPoint(sucrose(0.8), { pressurePa })).toThrow(ModelRangeError);
    }
  });

  it('refuses solids that weigh less than nothing', () => {
    for (const massG of [-1, Number.NaN]) {
      const impossible = { ...sucrose(0.5), solids: [pure('sucrose', massG)] };
      expect(() => boilingPoint(impossible)).toThrow(ModelRangeError);
    }
  });

  it('warns past 0.995 dissolved, and that sucrose does not stand such heat', () => {
    const codes = boilingPoint(sucrose(0.997)).warnings.map(({ code, parameter }) => [
      code,
      parameter,
    ]);
    expect(codes).toEqual([
      ['outside-tested-range', 'dissolvedMassFraction'],
      ['sugar-decomposes', 'temperatureC'],
    ]);
    expect(boilingPoint(massOf([pure('isomalt', 99.5)], 0.5)).warnings).toEqual([]);
  });

  it('names a species it does not know, with its share, and takes it for sucrose', () => {
    for (const name of ['moon-sugar', 'constructor']) {
      const strange = massOf([pure('sucrose', 60), pure(name as SpeciesId, 20)], 20);
      const { boilingPointC, warnings } = boilingPoint(strange);
      expect(boilingPointC).toBeCloseTo(boilingPoint(sucrose(0.8)).boilingPointC, 9);
      expect(warnings).toEqual([
        {
          code: 'species-not-modelled',
          parameter: 'shareOfDissolvedSolids',
          value: 0.25,
          limits: [0, 0],
          subject: name,
        },
      ]);
    }
  });

  it('lets salt count as two particles', () => {
    const brine = massOf([pure('sodium-chloride', 1)], 99);
    // 1 g in 99 g of water: 0.1728 mol/kg, twice over, at 0.51 K·kg/mol.
    expect(boilingPoint(brine).boilingPointElevationK).toBeCloseTo(0.176, 2);
  });

  it('hardly feels protein, whose molecules are few', () => {
    const broth = boilingPoint(massOf([pure('protein', 10)], 90)).boilingPointElevationK;
    expect(broth).toBeLessThan(boilingPoint(sucrose(0.1)).boilingPointElevationK);
  });

  it('has a band as wide as what is in print differs', () => {
    for (const [dissolved, widthK] of [
      [0, 0.5],
      [0.3, 0.5],
      [0.65, 1.5],
      [0.775, 3.5],
      [0.885, 5.5],
      [0.97, 6],
    ] as const) {
      expect(halfWidth(boilingPoint(sucrose(dissolved)).band)).toBeCloseTo(widthK, 6);
    }
  });

  it('has a wider one for polyols, about 8 K near dryness', () => {
    const width = (solids: readonly Solid[]) => halfWidth(boilingPoint(massOf(solids, 3)).band);
    expect(width([pure('xylitol', 97)])).toBeCloseTo(8.1, 0);
    expect(width([pure('isomalt', 97)])).toBeGreaterThan(8);
    expect(width([pure('isomalt', 97)])).toBeLessThan(8.5);
    const half = width([pure('sucrose', 48.5), pure('isomalt', 48.5)]);
    expect(half).toBeGreaterThan(6.5);
    expect(half).toBeLessThan(7.5);
  });

  it('has a wider one for a species nobody measured', () => {
    const trehalose = boilingPoint(massOf([pure('trehalose', 90)], 10));
    const plain = boilingPoint(sucrose(0.9));
    expect(trehalose.boilingPointC).toBeCloseTo(plain.boilingPointC, 9);
    // 0.1 of interaction is worth 1.7 K at 90 %.
    const plusMinusK = Math.hypot(halfWidth(plain.band), 1.5 * 1.7);
    expect(halfWidth(trehalose.band)).toBeCloseTo(plusMinusK, 1);
  });

  it('knows a syrup better by its profile than by its dextrose equivalent', () => {
    const at = (given: 'de' | 'profile') =>
      boilingPoint(massOf([{ ...syrup42, given }], 100 * (3 / 97))).boilingPointC;
    expect(at('profile') - at('de')).toBeCloseTo(-0.12, 2);
  });

  it('passes on what a syrup warns of', () => {
    const thin = { ...syrup42, dextroseEquivalent: 10 };
    expect(boilingPoint(massOf([thin], 25)).warnings).toHaveLength(1);
  });
});

describe('drySolidsAtBoil', () => {
  it('does not ask how much water there is', () => {
    const [thin, thick] = [sucrose(0.3), sucrose(0.95)].map((mass) =>
      drySolidsAtBoil(mass, { temperatureC: 130 }),
    );
    if (thin === undefined || thick === undefined || isNone(thin) || isNone(thick)) {
      throw new Error('sucrose boils at 130 °C');
    }
    expect(thin.dissolvedMassFraction).toBeCloseTo(thick.dissolvedMassFraction, 12);
    expect(thin.drySolidsMassFraction).toBe(thin.dissolvedMassFraction);
  });

  it('counts fat among the dry solids', () => {
    const toffee = massOf([pure('sucrose', 80)], 20, [{ kind: 'fat', massG: 40 }]);
    const result = drySolidsAtBoil(toffee, { temperatureC: 120 });
    if (isNone(result)) throw new Error('toffee boils at 120 °C');
    const { dissolvedMassFraction: dissolved, drySolidsMassFraction: dry } = result;
    const waterG = (80 * (1 - dissolved)) / dissolved;
    expect(dry).toBeCloseTo(120 / (120 + waterG), 12);
  });

  it('has for band what the band of the temperature makes of it', () => {
    const result = drySolidsAtBoil(sucrose(0.5), { temperatureC: 150 });
    if (isNone(result)) throw new Error('sucrose boils at 150 °C');
    const ends = [144, 156].map((temperatureC) => {
      const end = drySolidsAtBoil(sucrose(0.5), { temperatureC });
      return isNone(end) ? Number.NaN : end.drySolidsMassFraction;
    });
    expect(result.band[0]).toBeCloseTo(ends[0] ?? Number.NaN, 9);
    expect(result.band[1]).toBeCloseTo(ends[1] ?? Number.NaN, 9);
  });

  it.each([
    ['below-the-boil', sucrose(0.5), { temperatureC: 99.9 }],
    ['below-the-boil', sucrose(0.5), { temperatureC: 95, pressurePa: 90_000 }],
    ['off-scale-dry', sucrose(0.5), { temperatureC: 370, pressurePa: 900 }],
    ['nothing-dissolved', massOf([], 100), { temperatureC: 120 }],
    ['nothing-dissolved', massOf([pure('sucrose', 0)], 100), { temperatureC: 120 }],
  ] as const)('has no answer: %s', (reason, mass, boil) => {
    expect(drySolidsAtBoil(mass, boil)).toEqual({ kind: 'none', reason });
  });

  it('refuses temperatures and pressures that are none', () => {
    for (const boil of [
      { temperatureC: Number.NaN },
      { temperatureC: 400 },
      { temperatureC: 120, pressurePa: 0 },
    ]) {
      expect(() => drySolidsAtBoil(sucrose(0.5), boil)).toThrow(ModelRangeError);
    }
  });
});

describe('cookTarget', () => {
  const uphill = { fromPressurePa: 101_325, toPressurePa: 84_556 };

  it('keeps the solids', () => {
    const target = cookTarget(sucrose(0.5), { temperatureC: 148, ...uphill });
    const here = drySolidsAtBoil(sucrose(0.5), { temperatureC: 148 });
    if (isNone(target) || isNone(here)) throw new Error('sucrose boils at 148 °C');
    const there = drySolidsAtBoil(sucrose(0.5), {
      temperatureC: target.temperatureC,
      pressurePa: 84_556,
    });
    if (isNone(there)) throw new Error('and at its target');
    expect(there.drySolidsMassFraction).toBeCloseTo(here.drySolidsMassFraction, 10);
  });

  it('has a band of a tenth of the shift', () => {
    const target = cookTarget(sucrose(0.5), { temperatureC: 148, ...uphill });
    if (isNone(target)) throw new Error('sucrose boils at 148 °C');
    expect(target.shiftK).toBeCloseTo(target.temperatureC - 148, 12);
    expect(halfWidth(target.band)).toBeCloseTo(-0.1 * target.shiftK, 12);
  });

  it('has no answer where the first kitchen has no boil', () => {
    expect(cookTarget(sucrose(0.5), { temperatureC: 90, ...uphill })).toEqual({
      kind: 'none',
      reason: 'below-the-boil',
    });
  });

  it('warns of the kitchen it comes from as well', () => {
    const target = cookTarget(sucrose(0.5), {
      temperatureC: 150,
      fromPressurePa: 130_000,
      toPressurePa: 101_325,
    });
    if (isNone(target)) throw new Error('sucrose boils at 150 °C');
    expect(target.warnings.map((warning) => warning.parameter)).toEqual(['fromPressurePa']);
  });
});

describe('waterActivity', () => {
  it('is 1 for water', () => {
    expect(waterActivity(massOf([], 100), { temperatureC: 25 })).toEqual({
      waterActivity: 1,
      warnings: [],
    });
  });

  it('warns in the cold, and of sucrose in great heat', () => {
    expect(waterActivity(sucrose(0.5), { temperatureC: 4 }).warnings).toHaveLength(1);
    expect(waterActivity(sucrose(0.5), { temperatureC: 170 }).warnings).toHaveLength(1);
  });

  it('refuses a mass without water', () => {
    expect(() => waterActivity(massOf([pure('sucrose', 1)], 0), { temperatureC: 25 })).toThrow(
      ModelRangeError,
    );
  });
});
