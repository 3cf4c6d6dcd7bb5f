import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  criticalHumidity,
  equilibriumRelativeHumidity,
  glassTransition,
  type IngredientId,
  isNone,
  type Mixture,
  ModelRangeError,
  mixture,
  moisturePickUp,
  type Part,
  type SpeciesId,
  solutionOf,
  waterAtRelativeHumidity,
  wrapLife,
} from 'vitrose';

/** What somebody measured, or what something stands in for. */
const KNOWN = [
  'sucrose',
  'glucose',
  'fructose',
  'maltose',
  'lactose',
  'trehalose',
  'isomaltulose',
  'allulose',
  'tagatose',
  'glucose-syrup',
  'maltodextrin',
  'isomalt',
  'sorbitol',
  'polydextrose',
  'inulin',
] as const satisfies readonly IngredientId[];
const SUGARS = [
  'sucrose',
  'maltose',
  'lactose',
  'trehalose',
  'glucose-syrup',
  'maltodextrin',
] as const;

const dryOf = (ingredients: readonly IngredientId[]) =>
  fc.array(
    fc
      .record({
        ingredient: fc.constantFrom(...ingredients),
        massG: fc.double({ min: 0.01, max: 1, noNaN: true }),
      })
      .map((one): Part => ({ ...one, drySolidsMassFraction: 1 })),
    { minLength: 1, maxLength: 4 },
  );
const known = dryOf(KNOWN);
const sugars = dryOf(SUGARS);
const moisture = fc.double({ min: 0, max: 0.6, noNaN: true });
const humid = fc.double({ min: 0, max: 0.95, noNaN: true });
const storeC = fc.double({ min: 0, max: 40, noNaN: true });

function withWater(parts: readonly Part[], waterMassFraction: number): Mixture {
  const dryG = parts.reduce((sum, { massG }) => sum + massG, 0);
  const waterG = (dryG * waterMassFraction) / (1 - waterMassFraction);
  return mixture([...parts, { ingredient: 'water', massG: waterG }]);
}

function humidity(of: Mixture, temperatureC: number): number {
  const answer = equilibriumRelativeHumidity(of, { temperatureC });
  return isNone(answer) ? Number.NaN : answer.relativeHumidity;
}

function held(of: Mixture, relativeHumidity: number, temperatureC: number): number {
  const answer = waterAtRelativeHumidity(of, { relativeHumidity, temperatureC });
  return isNone(answer) ? Number.NaN : answer.moistureMassFraction;
}

describe('the humidity of a sweet', () => {
  it('never falls with water, for any mixture', () => {
    fc.assert(
      fc.property(known, moisture, moisture, storeC, (parts, a, b, temperatureC) => {
        const [drier, wetter] = a < b ? [a, b] : [b, a];
        expect(humidity(withWater(parts, wetter), temperatureC)).toBeGreaterThanOrEqual(
          humidity(withWater(parts, drier), temperatureC) - 1e-9,
        );
      }),
    );
  });

  it('rises with water for every solute on its own, through the join of the two models', () => {
    for (const ingredient of KNOWN) {
      const parts = [{ ingredient, massG: 1, drySolidsMassFraction: 1 }];
      let below = -1;
      for (let water = 0; water < 0.3; water += 0.0025) {
        const here = humidity(withWater(parts, water), 25);
        expect(here, `${ingredient} at ${water}`).toBeGreaterThan(below);
        below = here;
      }
    }
  });

  it('lies between 0 and 1, inside its band', () => {
    fc.assert(
      fc.property(known, moisture, storeC, (parts, water, temperatureC) => {
        const answer = equilibriumRelativeHumidity(withWater(parts, water), { temperatureC });
        if (isNone(answer)) throw new Error(answer.reason);
        const { relativeHumidity, band } = answer;
        expect(band[0]).toBeGreaterThanOrEqual(0);
        expect(relativeHumidity).toBeGreaterThanOrEqual(band[0] - 1e-12);
        expect(relativeHumidity).toBeLessThanOrEqual(band[1] + 1e-12);
        expect(band[1]).toBeLessThan(1);
      }),
    );
  });

  it('does not depend on how much there is', () => {
    const factor = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(known, moisture, factor, (parts, water, times) => {
        const scaled = parts.map((part) => ({ ...part, massG: part.massG * times }));
        expect(humidity(withWater(scaled, water), 25)).toBeCloseTo(
          humidity(withWater(parts, water), 25),
          8,
        );
      }),
    );
  });

  it('comes back from the water it goes with', () => {
    fc.assert(
      fc.property(known, humid, storeC, (parts, relativeHumidity, temperatureC) => {
        const water = held(mixture(parts), relativeHumidity, temperatureC);
        // A stretch on which the boiling model lies lower than the isotherm is level.
        expect(humidity(withWater(parts, water), temperatureC)).toBeCloseTo(relativeHumidity, 6);
      }),
    );
  });

  it('is unknown for sugar alcohols nobody measured', () => {
    const unknown = fc.constantFrom<SpeciesId>(
      'xylitol',
      'maltitol',
      'erythritol',
      'lactitol',
      'mannitol',
      'glycerol',
      'hydrogenated-oligosaccharides',
    );
    fc.assert(
      fc.property(unknown, storeC, (species, temperatureC) => {
        const of = solutionOf(species, { drySolidsMassFraction: 0.98 });
        expect(equilibriumRelativeHumidity(of, { temperatureC })).toEqual({
          kind: 'none',
          reason: 'no-sorption-data',
        });
      }),
    );
  });

  it('cannot be a percentage', () => {
    const of = solutionOf('sucrose', { drySolidsMassFraction: 0.98 });
    fc.assert(
      fc.property(fc.double({ min: 1.001, max: 100, noNaN: true }), (relativeHumidity) => {
        expect(() => waterAtRelativeHumidity(of, { relativeHumidity, temperatureC: 25 })).toThrow(
          /percentage/,
        );
      }),
    );
  });
});

describe('drier is never stickier', () => {
  it('in drier air a sweet ends with a higher glass transition', () => {
    fc.assert(
      fc.property(known, humid, humid, (parts, a, b) => {
        const [drier, damper] = a < b ? [a, b] : [b, a];
        const softens = (relativeHumidity: number) =>
          glassTransition(withWater(parts, held(mixture(parts), relativeHumidity, 25)))
            .glassTransitionC;
        expect(softens(drier)).toBeGreaterThanOrEqual(softens(damper) - 1e-9);
      }),
    );
  });

  it('the critical humidity comes before sticking, and sticking before sticky', () => {
    fc.assert(
      fc.property(known, storeC, (parts, store) => {
        const answer = criticalHumidity(mixture(parts), { storeC: store });
        if (isNone(answer)) {
          expect(answer.reason).toBe('already-soft');
          return;
        }
        const { relativeHumidity, sticksFrom, stickyAt, band } = answer;
        expect(sticksFrom.relativeHumidity).toBeGreaterThanOrEqual(relativeHumidity);
        expect(stickyAt.relativeHumidity).toBeGreaterThanOrEqual(sticksFrom.relativeHumidity);
        expect(band[0]).toBeLessThanOrEqual(relativeHumidity);
        expect(band[1]).toBeGreaterThanOrEqual(relativeHumidity);
      }),
    );
  });

  it('a warmer store bears less damp air', () => {
    fc.assert(
      fc.property(sugars, storeC, storeC, (parts, a, b) => {
        // Near freezing the join moves with the temperature of the boiling model, by less than this.
        fc.pre(Math.abs(a - b) > 5);
        const [cool, warm] = a < b ? [a, b] : [b, a];
        const at = (store: number) => criticalHumidity(mixture(parts), { storeC: store });
        const [cooler, warmer] = [at(cool), at(warm)];
        if (isNone(cooler) || isNone(warmer)) return;
        expect(warmer.relativeHumidity).toBeLessThan(cooler.relativeHumidity);
      }),
    );
  });
});

describe('a wrap', () => {
  const pack = fc.record({
    pieceG: fc.double({ min: 1, max: 500, noNaN: true }),
    areaCm2: fc.double({ min: 1, max: 2_000, noNaN: true }),
    wvtrGPerM2Day: fc.double({ min: 0.01, max: 500, noNaN: true }),
    storeC: fc.double({ min: 10, max: 30, noNaN: true }),
    relativeHumidity: fc.double({ min: 0.2, max: 1, noNaN: true }),
  });
  const water = fc.double({ min: 0, max: 0.04, noNaN: true });

  it('keeps shorter the more it lets through, and in damper air', () => {
    fc.assert(
      fc.property(sugars, water, pack, (parts, wetness, asked) => {
        const sweet = withWater(parts, wetness);
        const here = wrapLife(sweet, asked);
        if (isNone(here)) return;
        const looser = wrapLife(sweet, { ...asked, wvtrGPerM2Day: asked.wvtrGPerM2Day * 1.5 });
        const damper = wrapLife(sweet, {
          ...asked,
          relativeHumidity: 0.5 + asked.relativeHumidity / 2,
        });
        if (isNone(looser) || isNone(damper)) throw new Error('no answer beside an answer');
        expect(looser.days).toBeCloseTo(here.days / 1.5, 6);
        expect(looser.daysFull).toBeLessThan(here.daysFull);
        expect(damper.days).toBeLessThanOrEqual(here.days);
        expect(damper.daysFull).toBeLessThanOrEqual(here.daysFull);
      }),
    );
  });

  it('keeps the drier sweet longer', () => {
    fc.assert(
      fc.property(sugars, water, water, pack, (parts, a, b, asked) => {
        const [drier, wetter] = a < b ? [a, b] : [b, a];
        const [longer, shorter] = [drier, wetter].map((wetness) =>
          wrapLife(withWater(parts, wetness), {
            ...asked,
            pieceG: undefined,
            dryMassG: asked.pieceG,
          }),
        ) as [ReturnType<typeof wrapLife>, ReturnType<typeof wrapLife>];
        if (isNone(longer) || isNone(shorter)) return;
        expect(longer.daysFull).toBeGreaterThanOrEqual(shorter.daysFull * (1 - 2e-3));
      }),
    );
  });

  it('has an answer inside its band, or a reason', () => {
    fc.assert(
      fc.property(known, water, pack, (parts, wetness, asked) => {
        const answer = wrapLife(withWater(parts, wetness), asked);
        if (isNone(answer)) {
          expect(['already-soft', 'never-reaches', 'no-estimate']).toContain(answer.reason);
          return;
        }
        expect(answer.days).toBeGreaterThan(0);
        expect(answer.daysFull).toBeGreaterThan(0);
        expect(answer.band[0]).toBeLessThanOrEqual(answer.days);
        expect(answer.band[1]).toBeGreaterThanOrEqual(answer.days);
        expect(Number.isFinite(answer.band[1])).toBe(true);
      }),
    );
  });

  it('has no days in air no wetter than the critical humidity', () => {
    fc.assert(
      fc.property(sugars, water, pack, humid, (parts, wetness, asked, relativeHumidity) => {
        const sweet = withWater(parts, wetness);
        const critical = criticalHumidity(sweet, { storeC: asked.storeC });
        if (isNone(critical)) return;
        const answer = wrapLife(sweet, { ...asked, relativeHumidity });
        if (relativeHumidity <= critical.relativeHumidity) expect(isNone(answer)).toBe(true);
        else if (isNone(answer)) expect(answer.reason).toBe('already-soft');
      }),
    );
  });

  it('cannot let through nothing at all', () => {
    const sweet = solutionOf('sucrose', { drySolidsMassFraction: 0.98 });
    fc.assert(
      fc.property(pack, fc.double({ min: -10, max: 0, noNaN: true }), (asked, wvtrGPerM2Day) => {
        expect(() => wrapLife(sweet, { ...asked, wvtrGPerM2Day })).toThrow(ModelRangeError);
      }),
    );
  });
});

describe('what a bare piece takes up', () => {
  const bare = fc.record({
    pieceG: fc.double({ min: 0.1, max: 100, noNaN: true }),
    areaCm2: fc.double({ min: 0.1, max: 500, noNaN: true }),
    temperatureC: fc.double({ min: 5, max: 40, noNaN: true }),
    relativeHumidity: humid,
    hours: fc.double({ min: 0, max: 1_000, noNaN: true }),
  });

  it('grows with time and never beyond what it holds in that air', () => {
    fc.assert(
      fc.property(
        sugars,
        fc.double({ min: 0, max: 0.04, noNaN: true }),
        bare,
        (parts, wetness, room) => {
          const sweet = withWater(parts, wetness);
          const now = moisturePickUp(sweet, room);
          if (isNone(now)) {
            expect(now.reason).toBe('air-is-drier');
            return;
          }
          const later = moisturePickUp(sweet, { ...room, hours: room.hours + 1 });
          if (isNone(later)) throw new Error(later.reason);
          expect(later.takenUpG).toBeGreaterThanOrEqual(now.takenUpG);
          expect(now.takenUpG).toBeGreaterThanOrEqual(0);
          expect(now.moistureMassFraction).toBeLessThanOrEqual(
            now.skinMoistureMassFraction * (1 + 1e-9),
          );
          expect(now.band[0]).toBeLessThanOrEqual(now.takenUpG);
          expect(now.band[1]).toBeGreaterThanOrEqual(now.takenUpG);
        },
      ),
    );
  });

  it('grows with the humidity of the room', () => {
    fc.assert(
      fc.property(sugars, bare, humid, (parts, room, other) => {
        const [drier, damper] =
          room.relativeHumidity < other
            ? [room.relativeHumidity, other]
            : [other, room.relativeHumidity];
        const sweet = withWater(parts, 0.02);
        const [less, more] = [drier, damper].map((relativeHumidity) =>
          moisturePickUp(sweet, { ...room, relativeHumidity }),
        ) as [ReturnType<typeof moisturePickUp>, ReturnType<typeof moisturePickUp>];
        if (isNone(less) || isNone(more)) return;
        expect(more.takenUpG).toBeGreaterThanOrEqual(less.takenUpG * (1 - 1e-9));
      }),
    );
  });
});
