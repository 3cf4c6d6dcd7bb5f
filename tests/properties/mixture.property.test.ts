import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  combine,
  evaporateTo,
  INGREDIENT_IDS,
  type Mixture,
  ModelRangeError,
  mixture,
  type Part,
  scaleMixture,
} from 'vitrose';

const massG = fc.double({ min: 1e-3, max: 1e5, noNaN: true });
const part: fc.Arbitrary<Part> = fc.record({
  ingredient: fc.constantFrom(...INGREDIENT_IDS),
  massG,
});
const parts = fc.array(part, { minLength: 1, maxLength: 8 });
const blend = parts.map((list) => mixture(list));

function weighed({ waterG, solids, apart }: Mixture): number {
  return [...solids, ...apart].reduce((sum, one) => sum + one.massG, waterG);
}

function fractions(of: Mixture): readonly number[] {
  const shares = new Map<string, number>();
  for (const solid of of.solids) {
    const name = solid.kind === 'pure' ? solid.species : `syrup ${solid.dextroseEquivalent}`;
    shares.set(name, (shares.get(name) ?? 0) + solid.massG / of.massG);
  }
  return [
    of.waterG / of.massG,
    of.drySolidsMassFraction,
    of.dissolvedMassFraction,
    ...shares.values(),
    ...of.apart.map((one) => one.massG / of.massG),
  ];
}

function expectSame(a: readonly number[], b: readonly number[]): void {
  expect(a).toHaveLength(b.length);
  for (const [at, value] of a.entries()) expect(value).toBeCloseTo(b[at] ?? Number.NaN, 12);
}

it('loses no gram and makes none', () => {
  fc.assert(
    fc.property(parts, (list) => {
      const total = list.reduce((sum, one) => sum + one.massG, 0);
      const made = mixture(list);
      expect(Math.abs(made.massG / total - 1)).toBeLessThanOrEqual(1e-9);
      expect(Math.abs(weighed(made) / total - 1)).toBeLessThanOrEqual(1e-9);
      expect(1 - made.waterG / made.massG).toBeCloseTo(made.drySolidsMassFraction, 9);
    }),
  );
});

it('keeps the fractions of a mass that is blended with itself', () => {
  fc.assert(
    fc.property(blend, (one) => {
      expectSame(fractions(combine([one, one])), fractions(one));
    }),
  );
});

it('keeps the fractions of a mass that is made larger or smaller', () => {
  fc.assert(
    fc.property(blend, fc.double({ min: 1e-3, max: 1e3, noNaN: true }), (one, factor) => {
      const scaled = scaleMixture(one, factor);
      expectSame(fractions(scaled), fractions(one));
      expect(scaled.massG / one.massG).toBeCloseTo(factor, 6);
    }),
  );
});

it('does not care whether two things are weighed together or put together', () => {
  fc.assert(
    fc.property(parts, parts, (first, second) => {
      const together = mixture([...first, ...second]);
      const apart = combine([mixture(first), mixture(second)]);
      expectSame(fractions(apart), fractions(together));
      expect(apart.solids.map((one) => one.kind)).toEqual(together.solids.map((one) => one.kind));
    }),
  );
});

it('merges a pure substance and never a syrup', () => {
  fc.assert(
    fc.property(parts, (list) => {
      const { solids } = mixture(list);
      const pure = solids.flatMap((one) => (one.kind === 'pure' ? [one.species] : []));
      expect(new Set(pure).size).toBe(pure.length);
      const syrups = ['glucose-syrup', 'dried-glucose-syrup', 'maltodextrin'];
      const bought = list.filter((one) => syrups.includes(String(one.ingredient)));
      expect(solids.length - pure.length).toBe(bought.length);
    }),
  );
});

it('takes water off and nothing else', () => {
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(blend, share, (one, howFar) => {
      fc.pre(one.drySolidsMassFraction > 0);
      const now = one.drySolidsMassFraction;
      const target = now + (1 - now) * howFar;
      const drier = evaporateTo(one, { drySolidsMassFraction: target });
      expect(drier.drySolidsMassFraction).toBeCloseTo(target, 9);
      expect(drier.waterG).toBeLessThanOrEqual(one.waterG);
      expect(drier.solids).toEqual(one.solids);
      expect(drier.apart).toEqual(one.apart);
    }),
  );
});

it('refuses what cannot be weighed', () => {
  const wrong = fc.oneof(
    fc.double({ max: -1e-9, noNaN: true }),
    fc.constantFrom(Number.NaN, Infinity, 2e9),
  );
  fc.assert(
    fc.property(fc.constantFrom(...INGREDIENT_IDS), wrong, (ingredient, mass) => {
      expect(() => mixture([{ ingredient, massG: mass }])).toThrow(ModelRangeError);
    }),
  );
});
