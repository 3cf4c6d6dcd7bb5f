import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  altitudeRules,
  drySolidsAtBoil,
  isNone,
  ModelRangeError,
  mixture,
  solutionOf,
  stageLadder,
  sugarStage,
  temperatureAtKitchen,
} from 'vitrose';

const elevationM = fc.double({ min: -500, max: 5_000, noNaN: true });
/** Under the sea, what boils just below 160 °C would come to lie in dry sugar, which stands still. */
const uphillM = fc.double({ min: 0, max: 5_000, noNaN: true });
const syrupC = fc.double({ min: 105, max: 159.9, noNaN: true });
const sugarShare = fc.double({ min: 0.6, max: 1, noNaN: true });
const sweet = (share: number) =>
  mixture([
    { ingredient: 'sucrose', massG: share },
    { ingredient: 'dried-glucose-syrup', massG: 1 - share, drySolidsMassFraction: 1 },
    { ingredient: 'water', massG: 0.3 },
  ]);

function hereC(temperatureC: number, elevation: number): number {
  const here = temperatureAtKitchen({ temperatureC, elevationM: elevation });
  if (isNone(here)) throw new Error(here.reason);
  return here.temperatureC;
}

it('keeps its order at every height, and leaves no temperature out', () => {
  fc.assert(
    fc.property(elevationM, (elevation) => {
      const ladder = stageLadder({ elevationM: elevation });
      for (const [at, rung] of ladder.entries()) {
        expect(rung.highC).toBeGreaterThan(rung.lowC);
        const above = ladder[at + 1];
        if (above !== undefined) expect(rung.highC).toBeCloseTo(above.lowC, 9);
      }
    }),
  );
});

it('comes cooler the higher the kitchen stands', () => {
  fc.assert(
    fc.property(syrupC, elevationM, elevationM, (temperatureC, a, b) => {
      fc.pre(Math.abs(a - b) > 1);
      expect(hereC(temperatureC, Math.max(a, b))).toBeLessThan(hereC(temperatureC, Math.min(a, b)));
    }),
  );
});

it('keeps the solids of a recipe, wherever it is cooked', () => {
  fc.assert(
    fc.property(
      syrupC,
      sugarShare,
      fc.double({ min: 50_000, max: 105_000, noNaN: true }),
      (temperatureC, share, pressurePa) => {
        const of = sweet(share);
        const here = temperatureAtKitchen({ temperatureC, pressurePa, mixture: of });
        if (isNone(here)) throw new Error(here.reason);
        const there = drySolidsAtBoil(of, { temperatureC });
        const again = drySolidsAtBoil(of, { temperatureC: here.temperatureC, pressurePa });
        if (isNone(there) || isNone(again)) throw new Error('boils');
        expect(again.drySolidsMassFraction).toBeCloseTo(there.drySolidsMassFraction, 8);
        expect(here.band[0]).toBeLessThanOrEqual(here.temperatureC);
        expect(here.band[1]).toBeGreaterThanOrEqual(here.temperatureC);
      },
    ),
  );
});

it('is the same stage up the mountain at the temperature moved there', () => {
  fc.assert(
    fc.property(syrupC, uphillM, (temperatureC, elevation) => {
      const here = temperatureAtKitchen({ temperatureC, elevationM: elevation });
      if (isNone(here)) throw new Error(here.reason);
      const rung = stageLadder({ elevationM: elevation }).find(
        (one) => here.temperatureC > one.lowC + 1e-4 && here.temperatureC < one.highC - 1e-4,
      );
      fc.pre(rung !== undefined);
      const seaLevel = sugarStage({ temperatureC });
      expect(seaLevel.id).toBe(rung?.id);
      expect(seaLevel.kind).toBe(rung?.kind === 'stage' ? 'stage' : 'between');
    }),
  );
});

it('climbs the ladder without going back as the pan heats up', () => {
  const order = ['too-thin', ...stageLadder().map((rung) => rung.id as string), 'burnt'];
  const temperatureC = fc.double({ min: 20, max: 250, noNaN: true });
  fc.assert(
    fc.property(temperatureC, temperatureC, sugarShare, (a, b, share) => {
      const at = (t: number) =>
        order.indexOf(sugarStage({ temperatureC: t, mixture: sweet(share) }).id);
      expect(at(Math.max(a, b))).toBeGreaterThanOrEqual(at(Math.min(a, b)));
      expect(at(a)).toBeGreaterThanOrEqual(0);
    }),
  );
});

it('answers for every pan: each temperature, pressure and recipe has a standing', () => {
  const recipe = fc.constantFrom(
    sweet(0.6),
    solutionOf('isomalt', { drySolidsMassFraction: 0.7 }),
    solutionOf('glycerol', { drySolidsMassFraction: 0.7 }),
    solutionOf('sucrose', { drySolidsMassFraction: 0 }),
  );
  fc.assert(
    fc.property(
      fc.double({ min: 5, max: 370, noNaN: true }),
      fc.double({ min: 900, max: 200_000, noNaN: true }),
      recipe,
      (temperatureC, pressurePa, of) => {
        const { kind, namesApply } = sugarStage({ temperatureC, pressurePa, mixture: of });
        expect(['too-thin', 'stage', 'between', 'dry', 'burnt']).toContain(kind);
        if (!namesApply) expect(kind).not.toBe('burnt');
      },
    ),
  );
});

it('moves further by the model than by what boiling water lost, and less than by constant activity', () => {
  const up = fc.double({ min: 100, max: 5_000, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 112, max: 159, noNaN: true }), up, (temperatureC, elevation) => {
      const rules = altitudeRules({ temperatureC, elevationM: elevation });
      expect(rules.boilingWater.errorK).toBeGreaterThan(0);
      expect(rules.constantWaterActivity.errorK).toBeLessThan(0);
      expect(rules.perThousandFeet.temperatureC - rules.perThousandFeet.errorK).toBeCloseTo(
        rules.model.temperatureC,
        9,
      );
    }),
  );
});

it('refuses air no kitchen has', () => {
  const outside = fc.oneof(
    fc.double({ max: 999, noNaN: true }),
    fc.double({ min: 115_001, noNaN: true }),
    fc.constant(Number.NaN),
  );
  fc.assert(
    fc.property(outside, (pressurePa) => {
      expect(() => stageLadder({ pressurePa })).toThrow(ModelRangeError);
      expect(() => temperatureAtKitchen({ temperatureC: 150, pressurePa })).toThrow(
        ModelRangeError,
      );
    }),
  );
});
