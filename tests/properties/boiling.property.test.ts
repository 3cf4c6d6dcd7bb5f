import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  boilingPoint,
  cookTarget,
  drySolidsAtBoil,
  isNone,
  type Mixture,
  ModelRangeError,
  mixture,
  type Part,
  waterActivity,
} from 'vitrose';

/** What a pan of sweets may hold besides water. */
const DRY = [
  'sucrose',
  'glucose',
  'fructose',
  'glucose-syrup',
  'dried-glucose-syrup',
  'invert-syrup',
  'isomalt',
  'maltitol',
  'xylitol',
  'sorbitol',
  'erythritol',
  'glycerol',
  'trehalose',
  'polydextrose',
  'maltodextrin',
  'citric-acid',
  'salt',
] as const satisfies readonly Part['ingredient'][];

/** One to four ingredients, by mass. */
const recipe = fc.uniqueArray(
  fc.record({
    ingredient: fc.constantFrom(...DRY),
    massG: fc.double({ min: 1, max: 100, noNaN: true }),
  }),
  { minLength: 1, maxLength: 4, selector: (part) => part.ingredient },
);

/** The dissolved part of a recipe, at this strength. */
function at(parts: readonly Part[], dissolvedMassFraction: number): Mixture {
  const mass = mixture(parts);
  const dissolvedG = mass.solids.reduce((sum, solid) => sum + solid.massG, 0);
  const waterG =
    dissolvedMassFraction > 0
      ? (dissolvedG * (1 - dissolvedMassFraction)) / dissolvedMassFraction
      : 100;
  return {
    ...mass,
    solids: dissolvedMassFraction > 0 ? mass.solids : [],
    apart: [],
    waterG,
    massG: waterG + dissolvedG,
    drySolidsMassFraction: dissolvedMassFraction,
    dissolvedMassFraction,
  };
}

const dissolved = fc.double({ min: 0, max: 0.995, noNaN: true });
const temperatureC = fc.double({ min: 20, max: 200, noNaN: true });
const pressurePa = fc.double({ min: 2_000, max: 120_000, noNaN: true });

describe('a boiling mass', () => {
  it('has finite answers everywhere the model was tested', () => {
    fc.assert(
      fc.property(recipe, dissolved, temperatureC, pressurePa, (parts, s, t, p) => {
        const mass = at(parts, s);
        const { waterActivity: aw } = waterActivity(mass, { temperatureC: t });
        expect(aw).toBeGreaterThan(0);
        expect(aw).toBeLessThanOrEqual(1);
        const { boilingPointC, boilingPointElevationK, band } = boilingPoint(mass, {
          pressurePa: p,
        });
        expect(Number.isFinite(boilingPointC)).toBe(true);
        expect(boilingPointElevationK).toBeGreaterThan(-1e-6);
        expect(band[0]).toBeLessThan(boilingPointC);
        expect(band[1]).toBeGreaterThan(boilingPointC);
      }),
    );
  });

  it('holds its water more tightly with every part of solids', () => {
    fc.assert(
      fc.property(recipe, dissolved, dissolved, temperatureC, (parts, a, b, t) => {
        fc.pre(Math.abs(a - b) > 1e-6);
        const of = (s: number): number =>
          waterActivity(at(parts, s), { temperatureC: t }).waterActivity;
        expect(of(Math.max(a, b))).toBeLessThan(of(Math.min(a, b)));
      }),
      { numRuns: 500 },
    );
  });

  it('boils hotter the drier it is', () => {
    fc.assert(
      fc.property(recipe, dissolved, dissolved, pressurePa, (parts, a, b, p) => {
        fc.pre(Math.abs(a - b) > 1e-5);
        const of = (s: number): number =>
          boilingPoint(at(parts, s), { pressurePa: p }).boilingPointC;
        expect(of(Math.max(a, b))).toBeGreaterThan(of(Math.min(a, b)));
      }),
    );
  });

  it('boils hotter the more the air weighs', () => {
    fc.assert(
      fc.property(recipe, dissolved, pressurePa, pressurePa, (parts, s, a, b) => {
        fc.pre(Math.abs(a - b) > 1e-3);
        const of = (p: number): number =>
          boilingPoint(at(parts, s), { pressurePa: p }).boilingPointC;
        expect(of(Math.max(a, b))).toBeGreaterThan(of(Math.min(a, b)));
      }),
    );
  });

  it('is found again from its temperature: solids, temperature, solids', () => {
    const some = fc.double({ min: 0.01, max: 0.995, noNaN: true });
    fc.assert(
      fc.property(recipe, some, pressurePa, (parts, s, p) => {
        const mass = at(parts, s);
        const { boilingPointC } = boilingPoint(mass, { pressurePa: p });
        const found = drySolidsAtBoil(mass, { temperatureC: boilingPointC, pressurePa: p });
        if (isNone(found)) throw new Error(found.reason);
        expect(Math.abs(found.dissolvedMassFraction - s)).toBeLessThanOrEqual(1e-9);
        expect(found.band[0]).toBeLessThanOrEqual(found.drySolidsMassFraction);
        expect(found.band[1]).toBeGreaterThanOrEqual(found.drySolidsMassFraction);
      }),
    );
  });

  it('comes back from another kitchen to where it was', () => {
    const some = fc.double({ min: 0.3, max: 0.98, noNaN: true });
    fc.assert(
      fc.property(recipe, some, pressurePa, pressurePa, (parts, s, here, there) => {
        fc.pre(Math.abs(here - there) > 1e-3);
        const mass = at(parts, s);
        const start = boilingPoint(mass, { pressurePa: here }).boilingPointC;
        const away = cookTarget(mass, {
          temperatureC: start,
          fromPressurePa: here,
          toPressurePa: there,
        });
        if (isNone(away)) throw new Error(away.reason);
        const back = cookTarget(mass, {
          temperatureC: away.temperatureC,
          fromPressurePa: there,
          toPressurePa: here,
        });
        if (isNone(back)) throw new Error(back.reason);
        expect(Math.abs(back.temperatureC - start)).toBeLessThan(1e-6);
        expect(Math.sign(away.shiftK)).toBe(Math.sign(there - here));
      }),
    );
  });

  it('never boils hotter for water, oil or alcohol', () => {
    const addition = fc.constantFrom(
      'water' as const,
      'flavour-oil' as const,
      'flavour-alcohol' as const,
    );
    fc.assert(
      fc.property(
        recipe,
        addition,
        fc.double({ min: 0.1, max: 50, noNaN: true }),
        (parts, ingredient, massG) => {
          const wet: readonly Part[] = [...parts, { ingredient: 'water', massG: 60 }];
          const before = boilingPoint(mixture(wet)).boilingPointC;
          const after = boilingPoint(mixture([...wet, { ingredient, massG }])).boilingPointC;
          expect(after).toBeLessThanOrEqual(before + 1e-9);
        },
      ),
    );
  });

  it('has bands without a jump, along the solids and along the recipe', () => {
    const inside = fc.double({ min: 0.01, max: 0.99, noNaN: true });
    const width = (mass: Mixture): number => {
      const { band } = boilingPoint(mass);
      return band[1] - band[0];
    };
    fc.assert(
      fc.property(recipe, inside, (parts, s) => {
        // 8 K of band over the steepest piece of ruler, 11 % of solids, and twice that for both ends.
        const step = 1e-5;
        expect(Math.abs(width(at(parts, s + step)) - width(at(parts, s)))).toBeLessThan(150 * step);
        const [first] = parts;
        if (first === undefined) return;
        const more = [{ ...first, massG: first.massG * (1 + step) }, ...parts.slice(1)];
        expect(Math.abs(width(at(more, s)) - width(at(parts, s)))).toBeLessThan(50 * step);
      }),
    );
  });

  it('has bands of solids without a jump along the temperature', () => {
    const boiling = fc.double({ min: 100.5, max: 190, noNaN: true });
    fc.assert(
      fc.property(recipe, boiling, (parts, t) => {
        const bandAt = (degreesC: number): readonly [number, number] => {
          const found = drySolidsAtBoil(at(parts, 0.5), { temperatureC: degreesC });
          if (isNone(found)) throw new Error(found.reason);
          return found.band;
        };
        const step = 1e-5;
        const [here, on] = [bandAt(t), bandAt(t + step)];
        // Near the boil of water a kelvin is worth most: two thirds of the solids at most.
        expect(Math.abs(on[0] - here[0])).toBeLessThan(step);
        expect(Math.abs(on[1] - here[1])).toBeLessThan(step);
      }),
    );
  });

  it('is refused when it cannot be meant', () => {
    const impossible = fc.constantFrom(Number.NaN, -1, 0, 1e9, Number.POSITIVE_INFINITY);
    fc.assert(
      fc.property(recipe, impossible, (parts, value) => {
        const mass = at(parts, 0.8);
        expect(() => boilingPoint(mass, { pressurePa: value })).toThrow(ModelRangeError);
        expect(() => drySolidsAtBoil(mass, { temperatureC: 120, pressurePa: value })).toThrow(
          ModelRangeError,
        );
        fc.pre(value !== 0);
        expect(() => waterActivity(mass, { temperatureC: value })).toThrow(ModelRangeError);
        expect(() => drySolidsAtBoil(mass, { temperatureC: value })).toThrow(ModelRangeError);
      }),
    );
  });
});
