import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  dryGlassTransition,
  glassTransition,
  type IngredientId,
  ModelRangeError,
  mixture,
  type Part,
} from 'vitrose';

const GLASS_FORMERS = [
  'sucrose',
  'glucose',
  'fructose',
  'maltose',
  'lactose',
  'trehalose',
  'isomalt',
  'maltitol',
  'xylitol',
  'sorbitol',
  'erythritol',
  'glycerol',
  'polydextrose',
  'citric-acid',
  'glucose-syrup',
] as const satisfies readonly IngredientId[];

const share = fc.double({ min: 0.01, max: 1, noNaN: true });
const solid = fc
  .record({ ingredient: fc.constantFrom(...GLASS_FORMERS), massG: share })
  .map((one): Part => ({ ...one, drySolidsMassFraction: 1 }));
const solids = fc.array(solid, { minLength: 1, maxLength: 6 });

const withWater = (parts: readonly Part[], waterG: number) =>
  mixture([...parts, { ingredient: 'water', massG: waterG }]);
const halfWidth = ({ band: [low, high] }: { readonly band: readonly [number, number] }) =>
  (high - low) / 2;

it('lies between those of its dry parts', () => {
  fc.assert(
    fc.property(solids, (parts) => {
      const ofParts = parts.map((part) => dryGlassTransition(mixture([part])).glassTransitionC);
      const { glassTransitionC } = dryGlassTransition(mixture(parts));
      expect(glassTransitionC).toBeGreaterThanOrEqual(Math.min(...ofParts) - 1e-9);
      expect(glassTransitionC).toBeLessThanOrEqual(Math.max(...ofParts) + 1e-9);
    }),
  );
});

it('falls with every drop of water, towards that of water', () => {
  const water = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(solids, water, water, (parts, a, b) => {
      fc.pre(Math.abs(a - b) > 1e-6);
      const [drier, wetter] = a < b ? [a, b] : [b, a];
      const dry = glassTransition(withWater(parts, drier)).glassTransitionC;
      const wet = glassTransition(withWater(parts, wetter)).glassTransitionC;
      expect(wet).toBeLessThan(dry);
      expect(wet).toBeGreaterThan(-135);
    }),
  );
});

it('is dry where there is no water', () => {
  fc.assert(
    fc.property(solids, (parts) => {
      const of = mixture(parts);
      expect(glassTransition(of).glassTransitionC).toBeCloseTo(
        dryGlassTransition(of).glassTransitionC,
        9,
      );
    }),
  );
});

it('does not depend on how much there is, nor on the order', () => {
  fc.assert(
    fc.property(solids, fc.double({ min: 0.1, max: 100, noNaN: true }), (parts, factor) => {
      const scaled = [...parts].reverse().map((part) => ({ ...part, massG: part.massG * factor }));
      const one = glassTransition(withWater(parts, 0.05));
      const other = glassTransition(withWater(scaled, 0.05 * factor));
      expect(other.glassTransitionC).toBeCloseTo(one.glassTransitionC, 6);
      expect(halfWidth(other)).toBeCloseTo(halfWidth(one), 6);
    }),
  );
});

it('rises as syrup of lower dextrose equivalent takes its place', () => {
  const dextroseEquivalent = fc.double({ min: 1, max: 100, noNaN: true });
  const of = (de: number) =>
    dryGlassTransition(mixture([{ ingredient: 'glucose-syrup', massG: 1, dextroseEquivalent: de }]))
      .glassTransitionC;
  fc.assert(
    fc.property(dextroseEquivalent, dextroseEquivalent, (a, b) => {
      fc.pre(Math.abs(a - b) > 1e-6);
      expect(of(Math.min(a, b))).toBeGreaterThan(of(Math.max(a, b)));
    }),
  );
});

it('has a band of 4 K at least, that moves no faster than the recipe', () => {
  const nudge = 1e-6;
  fc.assert(
    fc.property(solids, fc.double({ min: 0, max: 0.1, noNaN: true }), (parts, waterG) => {
      const here = glassTransition(withWater(parts, waterG));
      const [first, ...rest] = parts as [Part, ...Part[]];
      const nudged = [{ ...first, massG: first.massG + nudge }, ...rest];
      const beside = glassTransition(withWater(nudged, waterG + nudge));
      expect(halfWidth(here)).toBeGreaterThanOrEqual(4 - 1e-9);
      // The steepest the band can be is 3 K for one part in a hundred of water.
      expect(Math.abs(halfWidth(beside) - halfWidth(here))).toBeLessThan(0.1);
    }),
  );
});

it('refuses a mass without anything that turns to glass', () => {
  fc.assert(
    fc.property(
      fc.constantFrom<IngredientId>('salt', 'water', 'sucralose', 'flavour-oil'),
      (id) => {
        expect(() => glassTransition(mixture([{ ingredient: id, massG: 1 }]))).toThrow(
          ModelRangeError,
        );
      },
    ),
  );
});
