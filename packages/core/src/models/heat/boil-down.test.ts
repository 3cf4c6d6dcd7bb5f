import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { boilingPoint } from '../boiling/boiling-point.js';
import { answered, KILOWATT, sugarAndWater } from './boil.fixture.js';
import { boilDown, boilDownIn } from './boil-down.js';
import { boilDownPoint } from './boil-down-point.js';
import type { BoilDownOptions } from './boil-down-types.js';

const hob = KILOWATT;
const done = (options: object = {}, charge = sugarAndWater()) =>
  answered(boilDown(charge, { hob, targetC: 148, ...options } as BoilDownOptions));
const reason = (options: object, charge = sugarAndWater()) => {
  const found = boilDown(charge, { hob, ...options } as BoilDownOptions);
  return 'kind' in found ? found.reason : 'an answer';
};

describe('boilDown', () => {
  it('starts where it is, boils where the mixture boils, and ends at its target', () => {
    const { path, firstBoilC, firstBoilS, endC, minutes } = done();
    const [start, firstBoil] = path;
    const end = path[path.length - 1];
    expect(start).toMatchObject({ timeS: 0, temperatureC: 20, waterG: 330 });
    expect(firstBoilC).toBeCloseTo(boilingPoint(sugarAndWater()).boilingPointC, 9);
    expect(firstBoil).toMatchObject({ timeS: firstBoilS, temperatureC: firstBoilC });
    expect(endC).toBe(148);
    expect(end).toMatchObject({ timeS: minutes * 60, temperatureC: 148 });
  });

  it('ends at the same place whether it is told the temperature or the solids', () => {
    const byHeat = done();
    const solids = byHeat.path[byHeat.path.length - 1]?.drySolidsMassFraction;
    const bySolids = done({ targetC: undefined, targetDrySolidsMassFraction: solids });
    expect(bySolids.endC).toBeCloseTo(148, 7);
    expect(bySolids.minutes).toBeCloseTo(byHeat.minutes, 7);
  });

  it('stands on the boiling curve at every point of its path', () => {
    for (const { waterG, temperatureC } of done().path.slice(1)) {
      const { boilingPointC } = boilingPoint(sugarAndWater(1_000, waterG));
      expect(temperatureC).toBeCloseTo(boilingPointC, 6);
    }
  });

  it.each([
    { targetC: 148 },
    { targetC: 112 },
    { targetC: 165, panMassG: 1_200, panDiameterMm: 200 },
    { targetC: 160, powerSteps: [{ fromC: 130, share: 0.35 }] },
    { targetC: 150, surfaceLossW: 150, powerSteps: [{ fromC: 125.3, share: 0.5 }] },
  ])('takes the same minutes in half the step: %o', (options) => {
    const all = { hob, ...options };
    for (const charge of [sugarAndWater(), sugarAndWater(100, 2_000)]) {
      const minutes = answered(boilDown(charge, all)).minutes;
      const finer = answered(boilDownIn(48, charge, all)).minutes;
      const coarser = answered(boilDownIn(12, charge, all)).minutes;
      expect(Math.abs(finer / minutes - 1)).toBeLessThan(0.001);
      expect(Math.abs(coarser / minutes - 1)).toBeLessThan(0.001);
    }
  });

  it('holds what the notes worked out by hand: 10 K a minute at 145 °C with 1.5 kW', () => {
    const charge = sugarAndWater(1_280, 450);
    const { rateAtEndKPerMin } = done(
      { targetC: 145, hob: { kind: 'resistance', powerW: 2_000 } },
      charge,
    );
    expect(Math.abs(rateAtEndKPerMin - 10)).toBeLessThan(0.3);
  });

  it('tells the rate its own path shows', () => {
    const { path } = done();
    for (const [at, point] of path.slice(1, -1).entries()) {
      const [before, after] = [path[at], path[at + 2]];
      if (before === undefined || after === undefined || at === 0) continue;
      const rate = (60 * (after.temperatureC - before.temperatureC)) / (after.timeS - before.timeS);
      expect(Math.abs(rate / point.rateKPerMin - 1)).toBeLessThan(0.05);
    }
  });

  it('puts into the pan and the air what the hob gives', () => {
    const { heatKJ, minutes, powerW } = done({ panMassG: 1_200, panDiameterMm: 220 });
    const { warming, dissolving, evaporation, concentrating, pan, total, lost } = heatKJ;
    expect(warming + dissolving + evaporation + concentrating + pan).toBeCloseTo(total, 9);
    expect(pan).toBeCloseTo(0.6 * 128, 9);
    expect(Math.abs((powerW * minutes * 0.06) / (total + lost) - 1)).toBeLessThan(0.001);
  });

  it('turns the flame down where it is told, to the degree', () => {
    const { path, minutes } = done({ powerSteps: [{ fromC: 130, share: 0.5 }] });
    const full = done();
    const turned = path.find((point) => point.temperatureC === 130);
    const atFull = boilDownPoint(full.path, { temperatureC: 130 });
    const turnedS = turned?.timeS ?? Number.NaN;
    expect(turnedS).toBeCloseTo(answered(atFull).timeS, -0.5);
    expect(60 * minutes - turnedS).toBeCloseTo(2 * (60 * full.minutes - turnedS), 0);
    expect(turned?.rateKPerMin).toBeCloseTo(answered(atFull).rateKPerMin / 2, 1);
  });

  it('counts a step that begins before the start, and steps in any order', () => {
    const half = done({ powerSteps: [{ fromC: 0, share: 0.5 }] });
    expect(half.minutes).toBeCloseTo(2 * done().minutes, 6);
    const steps = [
      { fromC: 60, share: 0.8 },
      { fromC: 130, share: 0.5 },
    ];
    const ordered = done({ powerSteps: steps });
    expect(done({ powerSteps: [...steps].reverse() })).toEqual(ordered);
    expect(ordered.path.some((point) => point.temperatureC === 60)).toBe(true);
  });

  it('starts at the first boil, with crystals or without', () => {
    const { firstBoilC } = done();
    const wet = done({ startC: firstBoilC, dissolved: true });
    expect(wet.firstBoilS).toBe(0);
    expect(wet.heatKJ.dissolving).toBe(0);
    const crystals = done({ startC: firstBoilC });
    expect(crystals.firstBoilS).toBeCloseTo(18.142, 3);
    expect(crystals.path.every(({ rateKPerMin }) => Number.isFinite(rateKPerMin))).toBe(true);
  });

  it('takes for a kettle test in the same pan what the test has paid already', () => {
    const timed = { kind: 'timed', waterG: 500, fromC: 20, boilsInMin: 3 } as const;
    const bare = done({ hob: timed, panMassG: 1_000 });
    const open = done({ hob: timed, panMassG: 1_000, panDiameterMm: 200 });
    const nameplate = { kind: 'resistance', powerW: bare.powerW / 0.75 } as const;
    const plate = done({ hob: nameplate, panMassG: 1_000, panDiameterMm: 200 });
    expect(open.heatKJ.lost).toBeGreaterThan(0);
    expect(open.heatKJ.lost).toBeLessThan(0.7 * plate.heatKJ.lost);
  });

  it('warns as a boil does', () => {
    expect(done().warnings).toEqual([]);
    const { warnings } = done({ targetC: 168 });
    expect(warnings.map(({ code }) => code)).toContain('sugar-decomposes');
  });
});

describe('a boil without an end', () => {
  it.each([
    ['never-boils', { hob: { kind: 'gas', powerW: 0 }, targetC: 148 }],
    ['never-boils', { surfaceLossW: 1_000, targetC: 148 }],
    ['never-boils', { powerSteps: [{ fromC: 90, share: 0 }], targetC: 148 }],
    [
      'never-reaches',
      { powerSteps: [{ fromC: 130, share: 0.1 }], surfaceLossW: 150, targetC: 148 },
    ],
    ['never-reaches', { targetDrySolidsMassFraction: 1 }],
    ['never-reaches', { targetC: 300, pressurePa: 1_000 }],
    ['already-past', { targetC: 106 }],
    ['already-past', { targetC: 80 }],
    ['already-past', { targetDrySolidsMassFraction: 0.7 }],
  ])('is %s: %o', (expected, options) => {
    expect(reason(options)).toBe(expected);
  });

  it('is one of water alone', () => {
    const water = mixture([{ ingredient: 'water', massG: 500 }]);
    expect(reason({ targetC: 110 }, water)).toBe('nothing-dissolved');
    expect(reason({ targetDrySolidsMassFraction: 0.5 }, water)).toBe('nothing-dissolved');
  });

  it('is one of dry sugar', () => {
    const sugar = mixture([{ ingredient: 'sucrose', massG: 500 }]);
    expect(reason({ targetC: 148 }, sugar)).toBe('already-past');
  });
});

describe('a boil that cannot be meant', () => {
  it.each([
    [
      'a kettle that boils at once',
      { hob: { kind: 'timed', waterG: 500, fromC: 20, boilsInMin: 0 }, targetC: 148 },
    ],
    ['no target', {}],
    ['two targets', { targetC: 148, targetDrySolidsMassFraction: 0.97 }],
    ['a target that is no number', { targetC: Number.NaN }],
    ['solids that are no number', { targetDrySolidsMassFraction: Number.NaN }],
    ['solids in per cent', { targetDrySolidsMassFraction: 97 }],
    ['a start hotter than its boil', { targetC: 148, startC: 120 }],
    ['a start of ice', { targetC: 148, startC: -5 }],
    ['a pan of less than nothing', { targetC: 148, panMassG: -1 }],
    ['a pan as wide as nothing', { targetC: 148, panDiameterMm: 0 }],
    ['a loss that is a gain', { targetC: 148, surfaceLossW: -1 }],
    ['a pressure of no pan', { targetC: 148, pressurePa: 2e6 }],
    ['a flame over full', { targetC: 148, powerSteps: [{ fromC: 130, share: 1.1 }] }],
    ['a flame at no temperature', { targetC: 148, powerSteps: [{ fromC: Number.NaN, share: 1 }] }],
    [
      'more turns than a cook takes',
      { targetC: 148, powerSteps: Array(9).fill({ fromC: 130, share: 1 }) },
    ],
  ])('is refused: %s', (_, options) => {
    expect(() => reason(options)).toThrow(ModelRangeError);
  });
});

describe('boilDownPoint', () => {
  const { path, minutes } = done();

  it('finds the same moment by time and by temperature', () => {
    const moment = answered(boilDownPoint(path, { temperatureC: 120.5 }));
    expect(answered(boilDownPoint(path, { timeS: moment.timeS })).temperatureC).toBeCloseTo(
      120.5,
      9,
    );
    const { boilingPointC } = boilingPoint(sugarAndWater(1_000, moment.waterG));
    expect(boilingPointC).toBeCloseTo(120.5, 0);
  });

  it('gives the ends as they are, and nothing beyond', () => {
    expect(boilDownPoint(path, { timeS: 0 })).toBe(path[0]);
    expect(boilDownPoint(path, { temperatureC: 148 })).toBe(path[path.length - 1]);
    const off = { kind: 'none', reason: 'off-the-path' };
    expect(boilDownPoint(path, { temperatureC: 149 })).toEqual(off);
    expect(boilDownPoint(path, { timeS: -1 })).toEqual(off);
    expect(boilDownPoint(path, { timeS: 61 * minutes })).toEqual(off);
  });

  it('refuses a moment that is no number', () => {
    expect(() => boilDownPoint(path, { timeS: Number.NaN })).toThrow(ModelRangeError);
    expect(() => boilDownPoint(path, {} as { timeS: number })).toThrow(ModelRangeError);
  });
});
