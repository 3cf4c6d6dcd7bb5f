import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  boosterForSweetness,
  evaporateTo,
  type IngredientId,
  type IntenseSweetener,
  isNone,
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

const INTENSE = fc.constantFrom<IntenseSweetener>(
  'sucralose',
  'acesulfame-k',
  'aspartame',
  'saccharin',
  'steviol-glycosides',
);
const fraction = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const dosed = (sweetener: IntenseSweetener, share: number) =>
  mixture([
    { ingredient: 'isomalt', massG: 100 * (1 - share), drySolidsMassFraction: 1 },
    { ingredient: sweetener, massG: 100 * share, drySolidsMassFraction: 1 },
  ]);

it('rises with the dose of an intense sweetener, less and less, and stays inside its band', () => {
  fc.assert(
    fc.property(INTENSE, fraction(1e-5, 0.002), fraction(5, 15), (sweetener, share, x) => {
      const of = (dose: number) =>
        relativeSweetness(dosed(sweetener, dose), { tastingConcentrationGPer100Ml: x });
      const [none, once, twice] = [of(0), of(share), of(2 * share)];
      const first = once.fromIntense;
      expect(first).toBeGreaterThan(none.fromIntense);
      expect(twice.fromIntense).toBeGreaterThan(first);
      expect(twice.fromIntense - first).toBeLessThan(first);
      for (const span of [once.band, once.likely]) {
        expect(span[0]).toBeLessThan(once.relativeSweetness);
        expect(span[1]).toBeGreaterThan(once.relativeSweetness);
      }
      expect(once.likely[0]).toBeGreaterThanOrEqual(once.band[0] - 1e-12);
      expect(once.likely[1]).toBeLessThanOrEqual(once.band[1] + 1e-12);
    }),
  );
});

it('is what was asked for once the booster is in, and its band holds the dose', () => {
  fc.assert(
    fc.property(
      parts,
      fc.oneof(INTENSE, fc.constantFrom('fructose' as const, 'xylitol' as const)),
      fraction(0.05, 1.3),
      fraction(0, 30),
      (list, sweetener, targetRelativeSweetness, waterG) => {
        const sweet = mixture([...list, { ingredient: 'water', massG: waterG }]);
        const found = boosterForSweetness(sweet, { sweetener, targetRelativeSweetness });
        if (isNone(found)) return;
        const boosted = mixture([
          ...list,
          { ingredient: 'water', massG: waterG },
          { ingredient: sweetener, massG: found.massG, drySolidsMassFraction: 1 },
        ]);
        expect(relativeSweetness(boosted).relativeSweetness).toBeCloseTo(
          targetRelativeSweetness,
          6,
        );
        expect(found.massG).toBeGreaterThan(0);
        expect(found.massFraction).toBeGreaterThan(0);
        expect(found.massFraction).toBeLessThan(1);
        expect(found.band[0]).toBeLessThanOrEqual(found.massFraction + 1e-12);
        expect(found.band[1]).toBeGreaterThanOrEqual(found.massFraction - 1e-12);
      },
    ),
  );
});

it('cannot be raised by a bulk sweetener to what that is itself, nor above', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('xylitol' as const, 'sorbitol' as const, 'maltitol' as const),
      fraction(0, 1),
      (sweetener, above) => {
        const own = relativeSweetness(mixture([{ ingredient: sweetener, massG: 1 }]));
        const found = boosterForSweetness(mixture([{ ingredient: 'isomalt', massG: 1 }]), {
          sweetener,
          targetRelativeSweetness: own.relativeSweetness + above,
        });
        expect(found).toEqual({ kind: 'none', reason: 'weaker-than-target' });
      },
    ),
  );
});

it('has no dose of what does not stand the heat of the mass', () => {
  fc.assert(
    fc.property(
      fc.constantFrom('sucralose' as const, 'aspartame' as const),
      fraction(-20, 250),
      (sweetener, addedAtC) => {
        const found = boosterForSweetness(mixture([{ ingredient: 'isomalt', massG: 1 }]), {
          sweetener,
          targetRelativeSweetness: 0.8,
          addedAtC,
        });
        expect(isNone(found)).toBe(addedAtC > 120);
      },
    ),
  );
});

it('of glucose rises with strength towards that of sugar', () => {
  const glucose = mixture([{ ingredient: 'glucose', massG: 1 }]);
  const at = (sucroseEquivalencePercent: number) =>
    relativeSweetness(glucose, { sucroseEquivalencePercent }).relativeSweetness;
  fc.assert(
    fc.property(fraction(0, 60), fraction(0, 60), (a, b) => {
      fc.pre(Math.abs(a - b) > 1e-6);
      expect(at(Math.max(a, b))).toBeGreaterThan(at(Math.min(a, b)));
      expect(at(a)).toBeLessThan(1);
    }),
  );
});
