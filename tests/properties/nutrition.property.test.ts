import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  combine,
  evaporateTo,
  glycaemicIndex,
  type IngredientId,
  isNone,
  type LabelAmounts,
  ModelRangeError,
  mixture,
  nutrition,
  type Part,
  polyolShare,
  roundForLabel,
  xylitolForDog,
} from 'vitrose';

const ANYTHING = [
  'sucrose',
  'glucose-syrup',
  'maltodextrin',
  'honey',
  'isomalt',
  'maltitol-syrup',
  'hydrogenated-starch-hydrolysate',
  'sorbitol',
  'erythritol',
  'glycerol',
  'allulose',
  'polydextrose',
  'inulin',
  'citric-acid',
  'sodium-citrate',
  'salt',
  'sucralose',
  'butter',
  'nuts',
  'gelatin',
  'flavour-alcohol',
  'water',
] as const satisfies readonly IngredientId[];

const part: fc.Arbitrary<Part> = fc.record({
  ingredient: fc.constantFrom(...ANYTHING),
  massG: fc.double({ min: 0.01, max: 500, noNaN: true }),
});
const parts = fc.array(part, { minLength: 1, maxLength: 7 });
const rules = fc.constantFrom('us' as const, 'eu' as const);
type Summed = Exclude<keyof LabelAmounts, 'energyKcalBand'>;
const keysOf = (amounts: LabelAmounts) =>
  (Object.keys(amounts) as (keyof LabelAmounts)[]).filter(
    (key): key is Summed => key !== 'energyKcalBand',
  );

it('adds up over a blend, energy and every gram of it', () => {
  fc.assert(
    fc.property(parts, parts, rules, (a, b, law) => {
      const [first, second] = [mixture(a), mixture(b)];
      const whole = combine([first, second]);
      const of = (one: typeof whole) => nutrition(one, { rules: law }).per100G;
      const [x, y, xy] = [of(first), of(second), of(whole)];
      for (const key of keysOf(xy)) {
        const sum = (x[key] * first.massG + y[key] * second.massG) / 100;
        expect((xy[key] * whole.massG) / 100, key).toBeCloseTo(sum, 6);
      }
    }),
  );
});

it('does not change in a given batch when water boils off', () => {
  fc.assert(
    fc.property(parts, rules, (list, law) => {
      const wet = mixture([
        ...list,
        { ingredient: 'sucrose', massG: 1 },
        { ingredient: 'water', massG: 90 },
      ]);
      const boiled = evaporateTo(wet, { drySolidsMassFraction: 0.995 });
      const batch = (of: typeof wet) =>
        (nutrition(of, { rules: law }).per100G.energyKcal * of.massG) / 100;
      expect(batch(boiled)).toBeCloseTo(batch(wet), 6);
    }),
  );
});

it('never counts more than was weighed, and holds its own energy in its band', () => {
  fc.assert(
    fc.property(parts, rules, (list, law) => {
      const { per100G } = nutrition(mixture(list), { rules: law });
      const { carbohydrateG, sugarsG, polyolsG, fibreG, organicAcidsG, proteinG, fatG, ethanolG } =
        per100G;
      const apart = law === 'us' ? 0 : fibreG + organicAcidsG;
      expect(carbohydrateG + proteinG + fatG + ethanolG + apart).toBeLessThanOrEqual(100 + 1e-9);
      expect(sugarsG + polyolsG).toBeLessThanOrEqual(carbohydrateG + 1e-9);
      const [low, high] = per100G.energyKcalBand;
      expect(low).toBeLessThanOrEqual(per100G.energyKcal + 1e-9);
      expect(high).toBeGreaterThanOrEqual(per100G.energyKcal - 1e-9);
      expect(high).toBeLessThanOrEqual(900 + 1e-9);
    }),
  );
});

it('meets no claim whose figure breaks its own limit', () => {
  fc.assert(
    fc.property(
      parts,
      rules,
      fc.double({ min: 1, max: 60, noNaN: true }),
      (list, law, servingG) => {
        const { claims } = nutrition(mixture(list), { rules: law, servingG });
        for (const { kind, value, limit, passes, because } of claims) {
          const keeps =
            passes === 'at-least'
              ? value >= limit - 1e-9
              : passes === 'at-most'
                ? value <= limit + 1e-9
                : value < limit + 1e-9;
          if (kind === 'met') expect(keeps).toBe(true);
          expect(because !== undefined).toBe(kind === 'needs-analysis');
        }
      },
    ),
  );
});

it('loses the claim sugar-free, and never regains it, as sugar goes in', () => {
  const sugarG = fc.double({ min: 0, max: 20, noNaN: true });
  fc.assert(
    fc.property(sugarG, sugarG, rules, (a, b, law) => {
      const isFree = (grams: number) =>
        nutrition(
          mixture([
            { ingredient: 'xylitol', massG: 80, drySolidsMassFraction: 1 },
            { ingredient: 'sucrose', massG: grams, drySolidsMassFraction: 1 },
          ]),
          { rules: law },
        ).claims.find(({ id }) => id === 'sugar-free')?.kind === 'met';
      if (isFree(Math.max(a, b))) expect(isFree(Math.min(a, b))).toBe(true);
    }),
  );
});

it('rounds to no more than a step away, and a larger figure never smaller', () => {
  const value = fc.double({ min: 0, max: 2_000, noNaN: true });
  const nutrient = fc.constantFrom('energyKcal' as const, 'sugarsG' as const, 'fatG' as const);
  fc.assert(
    fc.property(value, value, nutrient, rules, (a, b, name, law) => {
      const [low, high] = [Math.min(a, b), Math.max(a, b)].map((one) =>
        roundForLabel(one, name, law),
      );
      expect(low?.value).toBeLessThanOrEqual((high?.value ?? 0) + 1e-12);
      const { kind, value: shown } = roundForLabel(a, name, law);
      if (kind === 'value') expect(Math.abs(shown - a)).toBeLessThanOrEqual(5 + 1e-9);
      else expect(a).toBeLessThan(shown + 1e-8);
    }),
  );
});

it('the glycaemic index of a blend lies between those of its parts', () => {
  fc.assert(
    fc.property(parts, (list) => {
      const whole = glycaemicIndex(mixture(list));
      const single = list.flatMap((one) => {
        const answer = glycaemicIndex(mixture([one]));
        return isNone(answer) ? [] : [answer.glycaemicIndex];
      });
      expect(isNone(whole)).toBe(single.length === 0);
      if (isNone(whole)) return;
      expect(whole.glycaemicIndex).toBeGreaterThanOrEqual(Math.min(...single) - 1e-9);
      expect(whole.glycaemicIndex).toBeLessThanOrEqual(Math.max(...single) + 1e-9);
      expect(whole.band[0]).toBeLessThanOrEqual(whole.glycaemicIndex);
      expect(whole.band[1]).toBeGreaterThanOrEqual(whole.glycaemicIndex);
    }),
  );
});

it('the polyol share grows with the piece and falls with the body', () => {
  const grams = fc.double({ min: 0.1, max: 100, noNaN: true });
  const kilograms = fc.double({ min: 3, max: 150, noNaN: true });
  const blend = mixture([
    { ingredient: 'isomalt', massG: 70 },
    { ingredient: 'maltitol-syrup', massG: 30 },
  ]);
  const share = (pieceG: number, bodyMassKg: number) => {
    const answer = polyolShare(blend, { pieceG, bodyMassKg });
    return isNone(answer) ? Number.NaN : answer.share;
  };
  fc.assert(
    fc.property(grams, kilograms, (pieceG, bodyMassKg) => {
      expect(share(pieceG * 2, bodyMassKg)).toBeCloseTo(share(pieceG, bodyMassKg) * 2, 9);
      expect(share(pieceG, bodyMassKg * 2)).toBeCloseTo(share(pieceG, bodyMassKg) / 2, 9);
    }),
  );
});

it('what a dog got never asks for less than a vet', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0.01, max: 10_000, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      fc.double({ min: 0.1, max: 150, noNaN: true }),
      (eatenG, xylitolMassFraction, dogKg) => {
        const answer = xylitolForDog({ eatenG, xylitolMassFraction, dogKg });
        expect(answer.doThis).toContain('phone-a-vet');
        expect(answer.heaviestDogKg.careful).toBeGreaterThanOrEqual(answer.heaviestDogKg.liver);
        expect(answer.reached === 'no-published-line').toBe(answer.doseMgPerKg < 75 - 1e-9);
      },
    ),
  );
});

it('refuses a portion that cannot be meant', () => {
  const outside = fc.oneof(
    fc.double({ max: 0, noNaN: true }),
    fc.double({ min: 100_001, noNaN: true }),
    fc.constant(Number.NaN),
  );
  const sugar = mixture([{ ingredient: 'sucrose', massG: 1 }]);
  fc.assert(
    fc.property(outside, rules, (servingG, law) => {
      expect(() => nutrition(sugar, { rules: law, servingG })).toThrow(ModelRangeError);
    }),
  );
});
