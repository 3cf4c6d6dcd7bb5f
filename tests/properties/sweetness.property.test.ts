import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  evaporateTo,
  type IngredientId,
  ModelRangeError,
  mixture,
  type Part,
  relativeSweetness,
} from 'vitrose';

const SWEETENERS = [
  'sucrose',
  'glucose',
  'fructose',
  'maltose',
  'lactose',
  'isomalt',
  'maltitol',
  'maltitol-syrup',
  'xylitol',
  'sorbitol',
  'erythritol',
  'glucose-syrup',
  'high-fructose-syrup',
  'polydextrose',
  'citric-acid',
] as const satisfies readonly IngredientId[];

const part: fc.Arbitrary<Part> = fc.record({
  ingredient: fc.constantFrom(...SWEETENERS),
  massG: fc.double({ min: 0.01, max: 100, noNaN: true }),
});
const parts = fc.array(part, { minLength: 1, maxLength: 6 });

it('of a mix lies between its parts, and so do both ends of its band', () => {
  fc.assert(
    fc.property(parts, (list) => {
      const ofParts = list.map((one) => relativeSweetness(mixture([one])));
      const whole = relativeSweetness(mixture(list));
      const between = (value: number, of: readonly number[]): void => {
        expect(value).toBeGreaterThanOrEqual(Math.min(...of) - 1e-9);
        expect(value).toBeLessThanOrEqual(Math.max(...of) + 1e-9);
      };
      between(
        whole.relativeSweetness,
        ofParts.map((one) => one.relativeSweetness),
      );
      between(
        whole.band[0],
        ofParts.map((one) => one.band[0]),
      );
      between(
        whole.band[1],
        ofParts.map((one) => one.band[1]),
      );
    }),
  );
});

it('lies inside its own band', () => {
  fc.assert(
    fc.property(parts, (list) => {
      const { relativeSweetness: middle, band } = relativeSweetness(mixture(list));
      expect(band[0]).toBeLessThanOrEqual(middle + 1e-12);
      expect(band[1]).toBeGreaterThanOrEqual(middle - 1e-12);
    }),
  );
});

it('does not change when water boils off', () => {
  fc.assert(
    fc.property(parts, (list) => {
      const wet = mixture([...list, { ingredient: 'water', massG: 50 }]);
      const dry = evaporateTo(wet, { drySolidsMassFraction: 0.999 });
      expect(relativeSweetness(dry).relativeSweetness).toBeCloseTo(
        relativeSweetness(wet).relativeSweetness,
        9,
      );
    }),
  );
});

it('rises with the dextrose equivalent of a syrup', () => {
  const dextroseEquivalent = fc.double({ min: 1, max: 100, noNaN: true });
  const of = (de: number) =>
    relativeSweetness(mixture([{ ingredient: 'glucose-syrup', massG: 1, dextroseEquivalent: de }]));
  fc.assert(
    fc.property(dextroseEquivalent, dextroseEquivalent, (a, b) => {
      fc.pre(Math.abs(a - b) > 1e-6);
      const [less, more] = [of(Math.min(a, b)), of(Math.max(a, b))];
      expect(more.relativeSweetness).toBeGreaterThan(less.relativeSweetness);
      expect(more.band[0]).toBeGreaterThanOrEqual(less.band[0]);
    }),
  );
});

it('of fructose falls as it is tasted warmer', () => {
  const tastingTemperatureC = fc.double({ min: 0, max: 100, noNaN: true });
  const fructose = mixture([{ ingredient: 'fructose', massG: 1 }]);
  const at = (temperature: number) =>
    relativeSweetness(fructose, { tastingTemperatureC: temperature }).relativeSweetness;
  fc.assert(
    fc.property(tastingTemperatureC, tastingTemperatureC, (a, b) => {
      fc.pre(Math.abs(a - b) > 1e-6);
      expect(at(Math.max(a, b))).toBeLessThan(at(Math.min(a, b)));
    }),
  );
});

it('is refused in a mouth of ice or steam', () => {
  const outside = fc.oneof(
    fc.double({ max: -1e-9, noNaN: true }),
    fc.double({ min: 100.001, noNaN: true }),
    fc.constant(Number.NaN),
  );
  fc.assert(
    fc.property(outside, (tastingTemperatureC) => {
      const sugar = mixture([{ ingredient: 'sucrose', massG: 1 }]);
      expect(() => relativeSweetness(sugar, { tastingTemperatureC })).toThrow(ModelRangeError);
    }),
  );
});
