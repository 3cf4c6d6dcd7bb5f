import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  glassMargin,
  glassTransition,
  type IngredientId,
  isNone,
  type Mixture,
  ModelRangeError,
  mixture,
  type Part,
  viscosity,
  waterAtGlassTransition,
  workingTemperatures,
} from 'vitrose';

const GLASS_FORMERS = [
  'sucrose',
  'glucose',
  'fructose',
  'maltose',
  'lactose',
  'isomalt',
  'maltitol',
  'xylitol',
  'sorbitol',
  'mannitol',
  'erythritol',
  'lactitol',
  'polydextrose',
  'glucose-syrup',
  'hydrogenated-starch-hydrolysate',
] as const satisfies readonly IngredientId[];

const solids = fc.array(
  fc
    .record({
      ingredient: fc.constantFrom(...GLASS_FORMERS),
      massG: fc.double({ min: 0.01, max: 1, noNaN: true }),
    })
    .map((one): Part => ({ ...one, drySolidsMassFraction: 1 })),
  { minLength: 1, maxLength: 4 },
);
const water = fc.double({ min: 0, max: 0.6, noNaN: true });
/** Hotter than that a wet syrup would long have boiled. */
const temperatureC = fc.double({ min: -20, max: 120, noNaN: true });

function withWater(parts: readonly Part[], waterMassFraction: number): Mixture {
  const dryG = parts.reduce((sum, { massG }) => sum + massG, 0);
  const waterG = (dryG * waterMassFraction) / (1 - waterMassFraction);
  return mixture([...parts, { ingredient: 'water', massG: waterG }]);
}

it('makes a syrup run thinner with every degree', () => {
  fc.assert(
    fc.property(solids, water, temperatureC, temperatureC, (parts, wetness, a, b) => {
      fc.pre(Math.abs(a - b) > 1e-3);
      const of = withWater(parts, wetness);
      const [cool, warm] = [Math.min(a, b), Math.max(a, b)].map((t) =>
        viscosity(of, { temperatureC: t }),
      ) as [ReturnType<typeof viscosity>, ReturnType<typeof viscosity>];
      if (isNone(warm)) expect(isNone(cool)).toBe(true);
      else if (!isNone(cool)) expect(warm.viscosityPaS).toBeLessThan(cool.viscosityPaS);
    }),
  );
});

it('makes a syrup run thinner with every drop of water, through the join of the two curves', () => {
  fc.assert(
    fc.property(solids, water, water, temperatureC, (parts, a, b, at) => {
      fc.pre(Math.abs(a - b) > 1e-6);
      const [dry, wet] = [Math.min(a, b), Math.max(a, b)].map((wetness) =>
        viscosity(withWater(parts, wetness), { temperatureC: at }),
      ) as [ReturnType<typeof viscosity>, ReturnType<typeof viscosity>];
      if (isNone(wet)) expect(isNone(dry)).toBe(true);
      else if (!isNone(dry)) expect(wet.viscosityPaS).toBeLessThan(dry.viscosityPaS);
    }),
  );
});

it('is glass below the glass transition and nowhere else, and lies in its band', () => {
  fc.assert(
    fc.property(solids, water, temperatureC, (parts, wetness, at) => {
      const of = withWater(parts, wetness);
      const answer = viscosity(of, { temperatureC: at });
      expect(isNone(answer)).toBe(at < glassTransition(of).glassTransitionC);
      if (isNone(answer)) return;
      expect(answer.viscosityPaS).toBeGreaterThan(1e-4);
      expect(answer.viscosityPaS).toBeLessThanOrEqual(1e12 * (1 + 1e-9));
      expect(answer.band[0]).toBeLessThan(answer.viscosityPaS);
      expect(answer.band[1]).toBeGreaterThan(answer.viscosityPaS);
    }),
  );
});

it('has the steps of the work in one order, each inside its band', () => {
  fc.assert(
    fc.property(solids, fc.double({ min: 0, max: 0.1, noNaN: true }), (parts, wetness) => {
      const { steps } = workingTemperatures(withWater(parts, wetness));
      const hottestFirst = Object.values(steps);
      for (const [index, { temperatureC: at, band, betweenCurvesC }] of hottestFirst.entries()) {
        expect(at).toBeLessThan(hottestFirst[index - 1]?.temperatureC ?? Infinity);
        expect(betweenCurvesC[0]).toBeLessThanOrEqual(at);
        expect(betweenCurvesC[1]).toBeGreaterThanOrEqual(at);
        expect(band[0]).toBeLessThanOrEqual(betweenCurvesC[0]);
        expect(band[1]).toBeGreaterThanOrEqual(betweenCurvesC[1]);
      }
    }),
  );
});

it('finds a working temperature at the viscosity it is meant for', () => {
  fc.assert(
    fc.property(solids, fc.double({ min: 0, max: 0.1, noNaN: true }), (parts, wetness) => {
      const of = withWater(parts, wetness);
      const { steps } = workingTemperatures(of);
      const answer = viscosity(of, { temperatureC: steps.fold.temperatureC });
      if (isNone(answer)) throw new Error(answer.reason);
      expect(answer.viscosityPaS).toBeCloseTo(1_000, 3);
    }),
  );
});

it('gives back the water that a glass transition needs', () => {
  fc.assert(
    fc.property(solids, water, (parts, wetness) => {
      const of = withWater(parts, wetness);
      const { glassTransitionC } = glassTransition(of);
      fc.pre(glassTransitionC > -100 && wetness > 1e-9);
      const found = waterAtGlassTransition(of, { glassTransitionC });
      if (isNone(found)) throw new Error(found.reason);
      expect(found.moistureMassFraction).toBeCloseTo(wetness, 9);
    }),
  );
});

it('loses a kelvin of margin for each the store is warmer', () => {
  const storeC = fc.double({ min: -40, max: 60, noNaN: true });
  fc.assert(
    fc.property(solids, water, storeC, storeC, (parts, wetness, a, b) => {
      const of = withWater(parts, wetness);
      const lost = glassMargin(of, { storeC: a }).marginK - glassMargin(of, { storeC: b }).marginK;
      expect(lost).toBeCloseTo(b - a, 9);
    }),
  );
});

it('refuses a temperature no sugar has', () => {
  const outside = fc.oneof(
    fc.double({ min: 200.001, noNaN: true }),
    fc.double({ max: -20.001, noNaN: true }),
    fc.constant(Number.NaN),
  );
  fc.assert(
    fc.property(solids, outside, (parts, at) => {
      expect(() => viscosity(mixture(parts), { temperatureC: at })).toThrow(ModelRangeError);
    }),
  );
});
