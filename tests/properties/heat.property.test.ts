import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  type BoilDownOptions,
  boilDown,
  boilingPoint,
  coolingTime,
  evaporateTo,
  evaporationHeat,
  hobPower,
  isNone,
  ModelRangeError,
  mixture,
  type None,
  powerForRate,
  specificHeat,
  standardPressure,
} from 'vitrose';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });

const charge = fc
  .record({ sucrose: between(50, 5_000), syrup: between(0, 5_000), water: between(0.4, 3) })
  .map(({ sucrose, syrup, water }) => ({ sucrose, syrup, waterG: water * (sucrose + syrup / 2) }));
type Charge = { readonly sucrose: number; readonly syrup: number; readonly waterG: number };
const inPan = ({ sucrose, syrup, waterG }: Charge) =>
  mixture([
    { ingredient: 'sucrose', massG: sucrose },
    { ingredient: 'glucose-syrup', massG: syrup },
    { ingredient: 'water', massG: waterG },
  ]);
const hob = (powerW: number) => ({ kind: 'induction', powerW }) as const;
const watts = between(200, 20_000);
const solids = between(0.9, 0.985);

function answered<T extends object>(result: T | None): T {
  if (isNone(result)) throw new RangeError(result.reason);
  return result as T;
}
const boil = (of: Charge, options: BoilDownOptions) => answered(boilDown(inPan(of), options));

it('takes longer with more water, and as long again for twice of everything', () => {
  fc.assert(
    fc.property(charge, solids, between(1, 1_000), (of, target, moreG) => {
      const options = { hob: hob(1_500), targetDrySolidsMassFraction: target };
      const minutes = boil(of, options).minutes;
      expect(boil({ ...of, waterG: of.waterG + moreG }, options).minutes).toBeGreaterThan(minutes);
      const twice = { sucrose: 2 * of.sucrose, syrup: 2 * of.syrup, waterG: 2 * of.waterG };
      expect(boil(twice, options).minutes / minutes).toBeCloseTo(2, 6);
    }),
  );
});

it('takes fewer minutes with more power, in proportion while nothing is lost', () => {
  fc.assert(
    fc.property(charge, solids, watts, between(1.01, 5), (of, target, powerW, times) => {
      const at = (power: number, loss: object) =>
        boil(of, { hob: hob(power), targetDrySolidsMassFraction: target, ...loss }).minutes;
      expect(at(powerW, {}) / at(times * powerW, {})).toBeCloseTo(times, 6);
      const loss = { surfaceLossW: 0.5 * powerW * 0.85 };
      expect(at(powerW, loss) / at(times * powerW, loss)).toBeGreaterThan(times);
    }),
  );
});

it('ends cooler up the hill, at the same solids', () => {
  const heightM = between(0, 4_000);
  fc.assert(
    fc.property(charge, solids, heightM, heightM, (of, target, a, b) => {
      fc.pre(Math.abs(a - b) > 1);
      const endC = (elevationM: number) =>
        boil(of, {
          hob: hob(1_500),
          targetDrySolidsMassFraction: target,
          pressurePa: standardPressure(elevationM).pressurePa,
        }).endC;
      expect(endC(Math.max(a, b))).toBeLessThan(endC(Math.min(a, b)));
    }),
  );
});

it('puts what the hob gives into the mass, the pan and the air', () => {
  const pan = fc.record({ panMassG: between(0, 3_000), panDiameterMm: between(100, 320) });
  fc.assert(
    fc.property(charge, solids, watts, pan, (of, target, powerW, vessel) => {
      const options = { hob: hob(powerW), targetDrySolidsMassFraction: target, ...vessel };
      const found = boilDown(inPan(of), options);
      if (isNone(found)) return;
      const { heatKJ, minutes, powerW: intoPanW } = found;
      // A hob that hardly holds against the loss loses more than any sum of a few pieces can tell.
      fc.pre(heatKJ.lost < heatKJ.total / 2);
      const given = intoPanW * minutes * 0.06;
      expect(Math.abs(given / (heatKJ.total + heatKJ.lost) - 1)).toBeLessThan(0.001);
    }),
  );
});

it('agrees with a sum over a thousand small steps of the public models', () => {
  fc.assert(
    fc.property(charge, solids, (of, target) => {
      const start = inPan(of);
      const { heatKJ } = boil(of, { hob: hob(1_500), targetDrySolidsMassFraction: target });
      const dryG = start.massG - start.waterG;
      const endG = dryG * (1 / target - 1);
      const steps = 1_000;
      const at = (step: number) => {
        const waterG = start.waterG * (endG / start.waterG) ** (step / steps);
        const left = evaporateTo(start, { drySolidsMassFraction: dryG / (dryG + waterG) });
        return { waterG, temperatureC: boilingPoint(left).boilingPointC };
      };
      let kJ = 0;
      let here = at(0);
      for (let step = 1; step <= steps; step += 1) {
        const next = at(step);
        const temperatureC = (here.temperatureC + next.temperatureC) / 2;
        const waterG = (here.waterG + next.waterG) / 2;
        const brix = (100 * dryG) / (dryG + waterG);
        const { specificHeatKJPerKgK } = specificHeat({ brix, temperatureC });
        const riseK = next.temperatureC - here.temperatureC;
        kJ += ((dryG + waterG) / 1_000) * specificHeatKJPerKgK * riseK;
        const { evaporationHeatKJPerKg } = evaporationHeat({ temperatureC });
        kJ += ((here.waterG - next.waterG) / 1_000) * evaporationHeatKJPerKg;
        here = next;
      }
      expect(Math.abs((heatKJ.evaporation + heatKJ.concentrating) / kJ - 1)).toBeLessThan(0.001);
    }),
    { numRuns: 5 },
  );
});

it('gets hotter and drier with every moment, and never cooler', () => {
  fc.assert(
    fc.property(charge, solids, between(110, 140), between(0.1, 1), (of, target, fromC, share) => {
      const { path } = boil(of, {
        hob: hob(1_500),
        targetDrySolidsMassFraction: target,
        powerSteps: [{ fromC, share }],
      });
      expect(path.length).toBeLessThanOrEqual(60);
      for (const [at, after] of path.slice(1).entries()) {
        const before = path[at];
        if (before === undefined) continue;
        expect(after.timeS).toBeGreaterThan(before.timeS);
        expect(after.temperatureC).toBeGreaterThan(before.temperatureC);
        expect(after.waterG).toBeLessThanOrEqual(before.waterG);
        expect(after.rateKPerMin).toBeGreaterThan(0);
      }
    }),
  );
});

it('asks for the power that gives the wanted rate', () => {
  fc.assert(
    fc.property(charge, between(125, 155), watts, (of, targetC, powerW) => {
      const { rateAtEndKPerMin, powerW: intoPanW } = boil(of, { hob: hob(powerW), targetC });
      fc.pre(rateAtEndKPerMin <= 200);
      const found = answered(
        powerForRate(inPan(of), { temperatureC: targetC, rateKPerMin: rateAtEndKPerMin }),
      );
      expect(found.powerIntoMassW / intoPanW).toBeCloseTo(1, 6);
    }),
  );
});

it('takes less to warm a syrup the drier it is, and more the hotter', () => {
  fc.assert(
    fc.property(between(0, 100), between(0, 100), between(0, 160), (a, b, temperatureC) => {
      fc.pre(Math.abs(a - b) > 1e-6);
      const at = (brix: number, atC: number) =>
        specificHeat({ brix, temperatureC: atC }).specificHeatKJPerKgK;
      expect(at(Math.max(a, b), temperatureC)).toBeLessThanOrEqual(
        at(Math.min(a, b), temperatureC),
      );
      expect(at(a, temperatureC + 10)).toBeGreaterThanOrEqual(at(a, temperatureC));
    }),
  );
});

it('reads twice the minutes of a kettle test as half the power', () => {
  fc.assert(
    fc.property(between(100, 3_000), between(0, 60), between(0.5, 60), (waterG, fromC, minutes) => {
      const timed = (boilsInMin: number) =>
        hobPower({ kind: 'timed', waterG, fromC, boilsInMin }).powerW;
      expect(timed(minutes) / timed(2 * minutes)).toBeCloseTo(2, 9);
    }),
  );
});

it('cools in parts as it cools at once', () => {
  const warm = fc.tuple(between(80, 160), between(0.05, 0.95), between(0.05, 0.95));
  fc.assert(
    fc.property(between(1, 50), warm, (massG, [fromC, a, b]) => {
      const airC = 22;
      const middleC = airC + (fromC - airC) * a;
      const toC = airC + (middleC - airC) * b;
      const minutes = (from: number, to: number) =>
        answered(coolingTime({ massG, fromC: from, toC: to, airC })).minutes;
      expect(minutes(fromC, middleC) + minutes(middleC, toC)).toBeCloseTo(minutes(fromC, toC), 6);
    }),
  );
});

it('refuses what cannot be meant, and answers what only never happens', () => {
  const nonsense = fc.constantFrom(Number.NaN, -1, Infinity);
  fc.assert(
    fc.property(charge, nonsense, (of, value) => {
      const start = inPan(of);
      const wrong: readonly BoilDownOptions[] = [
        { hob: hob(value), targetC: 148 },
        { hob: hob(1_500), targetC: value },
        { hob: hob(1_500), targetC: 148, panMassG: value },
        { hob: hob(1_500), targetC: 148, panDiameterMm: value },
        { hob: { kind: 'timed', waterG: 500, fromC: 20, boilsInMin: value }, targetC: 148 },
        { hob: { kind: 'timed', waterG: 500, fromC: 20, boilsInMin: 0 }, targetC: 148 },
      ];
      for (const options of wrong) expect(() => boilDown(start, options)).toThrow(ModelRangeError);
      expect(boilDown(start, { hob: hob(0), targetC: 148 })).toEqual({
        kind: 'none',
        reason: 'never-boils',
      });
    }),
  );
});
