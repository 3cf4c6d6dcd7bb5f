import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  dissolvingTemperature,
  glassTransition,
  grainingScore,
  grainingTime,
  grainingTimeInProcess,
  type IngredientId,
  isNone,
  ModelRangeError,
  mixture,
  type None,
  type Part,
  SOLUBILITY_ROWS,
  type SpeciesId,
  scaleMixture,
  solubility,
  sucroseSolubility,
  sucroseSupersaturation,
} from 'vitrose';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const dry = (ingredient: IngredientId, massG: number): Part => ({
  ingredient,
  massG,
  drySolidsMassFraction: 1,
});
const syrup = (dextroseEquivalent: number, massG: number): Part => ({
  ...dry('maltodextrin', massG),
  dextroseEquivalent,
});
const wet = (parts: readonly Part[], waterMassFraction: number) => {
  const solidsG = parts.reduce((sum, { massG }) => sum + massG, 0);
  const massG = (solidsG * waterMassFraction) / (1 - waterMassFraction);
  return mixture([...parts, { ingredient: 'water', massG }]);
};

/** Everything that is put into a sugar sweet beside sucrose. */
const doctor = fc.constantFrom<IngredientId>(
  'glucose',
  'fructose',
  'maltose',
  'glucose-syrup',
  'maltodextrin',
  'sorbitol',
  'xylitol',
  'maltitol',
  'isomalt',
  'citric-acid',
  'glycerol',
);
const species = fc.constantFrom(...(Object.keys(SOLUBILITY_ROWS) as SpeciesId[]));

function answered<T extends object>(result: T): Exclude<T, None> {
  if (isNone(result)) throw new Error(`no answer: ${result.reason}`);
  return result as Exclude<T, None>;
}

describe('solubility', () => {
  it('rises with warmth, by either equation', () => {
    fc.assert(
      fc.property(
        fc.constantFrom<'vavrinecz' | 'charles'>('vavrinecz', 'charles'),
        number(0, 100),
        number(0, 100),
        (equation, a, b) => {
          fc.pre(Math.abs(a - b) > 1e-6);
          const at = (temperatureC: number) =>
            sucroseSolubility(temperatureC, { equation }).sucroseMassFraction;
          expect(at(Math.max(a, b))).toBeGreaterThan(at(Math.min(a, b)));
        },
      ),
    );
  });

  it('of anything else rises with warmth between its rows, and has no answer beyond', () => {
    fc.assert(
      fc.property(species, number(-60, 200), number(-60, 200), (of, a, b) => {
        fc.pre(Math.abs(a - b) > 1e-6);
        const [cold, warm] = [solubility(of, Math.min(a, b)), solubility(of, Math.max(a, b))];
        const printedC = SOLUBILITY_ROWS[of as keyof typeof SOLUBILITY_ROWS].map(([rowC]) => rowC);
        const warmC = Math.max(a, b);
        const isBeyond = warmC > Math.max(...printedC) || warmC < Math.min(...printedC);
        expect(isNone(warm)).toBe(isBeyond);
        if (isNone(cold) || isNone(warm)) return;
        expect(warm.massFraction).toBeGreaterThan(cold.massFraction);
        expect(warm.massFraction).toBeLessThan(1);
      }),
    );
  });

  it('and the dissolving temperature are each the other way round', () => {
    fc.assert(
      fc.property(fc.oneof(species, fc.constant<SpeciesId>('sucrose')), number(0, 1), (of, w) => {
        const found = dissolvingTemperature(of, { massFraction: w });
        if (isNone(found)) return;
        const { massFraction } = answered(solubility(of, found.dissolvesAtC));
        if (found.atOrBelow) expect(massFraction).toBeGreaterThanOrEqual(w - 1e-9);
        else expect(massFraction).toBeCloseTo(w, 5);
      }),
    );
  });
});

describe('supersaturation', () => {
  it('is over 1 in every sweet with over 30 % of sucrose and under 10 % of water, at 0 to 60 °C', () => {
    fc.assert(
      fc.property(
        number(0.301, 1),
        doctor,
        number(0.0001, 0.0999),
        number(0, 60),
        fc.constantFrom<'long' | 'linear'>('long', 'linear'),
        (sucrose, other, water, temperatureC, equation) => {
          const solids = 1 - water;
          fc.pre(sucrose <= solids);
          const sweet = mixture([
            dry('sucrose', sucrose),
            dry(other, solids - sucrose),
            { ingredient: 'water', massG: water },
          ]);
          const { supersaturation } = answered(
            sucroseSupersaturation(sweet, { temperatureC, equation }),
          );
          expect(supersaturation).toBeGreaterThan(1);
        },
      ),
    );
  });

  it('falls with warmth and with water, and does not depend on how much there is', () => {
    const share = number(0.05, 0.9);
    fc.assert(
      fc.property(
        doctor,
        share,
        share,
        number(0, 99),
        (other, doctorShare, water, temperatureC) => {
          const parts = [dry('sucrose', 1 - doctorShare), dry(other, doctorShare)];
          const of = (mass: ReturnType<typeof wet>, atC: number) =>
            answered(sucroseSupersaturation(mass, { temperatureC: atC })).supersaturation;
          const here = of(wet(parts, water), temperatureC);
          expect(here).toBeGreaterThan(0);
          expect(of(wet(parts, water), temperatureC + 1)).toBeLessThan(here);
          expect(of(wet(parts, water + 0.01), temperatureC)).toBeLessThan(here);
          expect(of(scaleMixture(wet(parts, water), 7), temperatureC)).toBeCloseTo(here, 6);
        },
      ),
    );
  });
});

describe('graining time', () => {
  const temperatureC = number(0, 60);
  const days = (mass: ReturnType<typeof wet>, atC: number) =>
    answered(grainingTime(mass, { temperatureC: atC })).log10Days;

  it('is never shorter with more of a glucose syrup of DE 20 to 62 at equal water', () => {
    fc.assert(
      fc.property(
        number(20, 62),
        number(0, 70),
        number(0, 70),
        number(0.001, 0.1),
        temperatureC,
        (dextroseEquivalent, a, b, water, atC) => {
          const of = (percent: number) =>
            days(
              wet([dry('sucrose', 100 - percent), syrup(dextroseEquivalent, percent)], water),
              atC,
            );
          expect(of(Math.max(a, b))).toBeGreaterThanOrEqual(of(Math.min(a, b)) - 1e-9);
        },
      ),
    );
  });

  it('is never shorter with more doctor of any kind at an equal distance from the glass', () => {
    fc.assert(
      fc.property(
        doctor,
        number(0, 49),
        number(0, 49),
        number(-20, 40),
        (other, a, b, aboveGlassK) => {
          const of = (percent: number) => {
            const mass = wet([dry('sucrose', 100 - percent), dry(other, percent)], 0.03);
            const atC = glassTransition(mass).glassTransitionC + aboveGlassK;
            return atC < -60 || atC > 100 ? undefined : days(mass, atC);
          };
          const [less, more] = [of(Math.min(a, b)), of(Math.max(a, b))];
          fc.pre(less !== undefined && more !== undefined);
          expect(more).toBeGreaterThanOrEqual((less ?? 0) - 1e-6);
        },
      ),
    );
  });

  it('is never longer with more water or warmth, and a tenth with seeds', () => {
    fc.assert(
      fc.property(
        doctor,
        number(0, 49),
        number(0.001, 0.08),
        number(0.001, 0.08),
        temperatureC,
        temperatureC,
        (other, percent, a, b, c, d) => {
          const parts = [dry('sucrose', 100 - percent), dry(other, percent)];
          const [drier, wetter] = [wet(parts, Math.min(a, b)), wet(parts, Math.max(a, b))];
          const [colder, warmer] = [Math.min(c, d), Math.max(c, d)];
          expect(days(wetter, colder)).toBeLessThanOrEqual(days(drier, colder) + 1e-9);
          expect(days(drier, warmer)).toBeLessThanOrEqual(days(drier, colder) + 1e-9);
          const seeded = answered(grainingTime(drier, { temperatureC: colder, seeded: true }));
          expect(seeded.log10Days).toBeCloseTo(days(drier, colder) - 1, 9);
        },
      ),
    );
  });

  it('of a mass that is worked is the shortest it has anywhere on its way', () => {
    fc.assert(
      fc.property(
        doctor,
        number(0, 49),
        number(0.005, 0.05),
        number(20, 95),
        number(20, 95),
        number(0, 1),
        (other, percent, water, a, b, between) => {
          const mass = wet([dry('sucrose', 100 - percent), dry(other, percent)], water);
          const [coldC, hotC] = [Math.min(a, b), Math.max(a, b)];
          const worked = answered(grainingTimeInProcess(mass, { formingC: [coldC, hotC] }));
          const somewhere = days(mass, coldC + between * (hotC - coldC));
          expect(worked.log10Days).toBeLessThanOrEqual(somewhere + 1e-9);
        },
      ),
    );
  });

  it('lies in its band, a decade either way, and is never under a minute and a half', () => {
    fc.assert(
      fc.property(doctor, number(0, 49), number(0.001, 0.1), temperatureC, (other, p, w, atC) => {
        const mass = wet([dry('sucrose', 100 - p), dry(other, p)], w);
        const time = answered(grainingTime(mass, { temperatureC: atC, seeded: true }));
        expect(time.band[0] / time.days).toBeCloseTo(0.1, 6);
        expect(time.band[1] / time.days).toBeCloseTo(10, 6);
        expect(time.days * 1440).toBeGreaterThan(1.5);
      }),
    );
  });

  it('is refused outside the temperatures of any store', () => {
    const outside = fc.oneof(
      fc.double({ max: -60.001, noNaN: true }),
      fc.double({ min: 100.001, noNaN: true }),
      fc.constant(Number.NaN),
    );
    fc.assert(
      fc.property(outside, (value) => {
        const sugar = wet([dry('sucrose', 1)], 0.03);
        expect(() => grainingTime(sugar, { temperatureC: value })).toThrow(ModelRangeError);
        expect(() => grainingTimeInProcess(sugar, { formingC: [value, 110] })).toThrow(
          ModelRangeError,
        );
      }),
    );
  });
});

describe('the graining score', () => {
  const time = number(1e-6, 1e9);

  it('rises with the time it has to stand and falls with the time it stands', () => {
    fc.assert(
      fc.property(time, time, time, (a, b, other) => {
        const [shorter, longer] = [Math.min(a, b), Math.max(a, b)];
        const of = (days: number, targetDays: number) => grainingScore({ days, targetDays }).score;
        expect(of(longer, other)).toBeLessThanOrEqual(of(shorter, other));
        expect(of(other, longer)).toBeGreaterThanOrEqual(of(other, shorter));
      }),
    );
  });

  it('lies in its band, between 0 and 100, and has the word of its number', () => {
    fc.assert(
      fc.property(time, time, (days, targetDays) => {
        const { score, band, word } = grainingScore({ days, targetDays });
        expect(score).toBeGreaterThanOrEqual(0);
        expect(score).toBeLessThanOrEqual(100);
        expect(band[0]).toBeLessThanOrEqual(score);
        expect(band[1]).toBeGreaterThanOrEqual(score);
        expect(word === 'low').toBe(score < 25);
        expect(word === 'near-certain').toBe(score > 75);
        expect(word === 'watch').toBe(score >= 25 && score < 50);
      }),
    );
  });
});
