import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import { mixture } from '../../matter/mixture/mixture.js';
import { solutionOf } from '../../matter/mixture/solution-of.js';
import type { Mixture } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';
import { boilingPoint, cookTarget, drySolidsAtBoil, waterActivity } from './index.js';

const sucrose = (drySolidsMassFraction: number): Mixture =>
  solutionOf('sucrose', { drySolidsMassFraction });
const halfWidth = ([low, high]: readonly [number, number]): number => (high - low) / 2;
const code = 'outside-tested-range';

describe('a number no boil can mean', () => {
  const pan = [873, 21_000_000];
  const impossible = (massG: number): Mixture => ({
    ...sucrose(0.5),
    solids: [{ kind: 'pure', species: 'sucrose', massG }],
  });
  it.each([
    ['pressurePa', 872, pan, () => boilingPoint(sucrose(0.8), { pressurePa: 872 })],
    ['pressurePa', 21_000_001, pan, () => boilingPoint(sucrose(0.8), { pressurePa: 21_000_001 })],
    ['dissolvedMassFraction', 1, [0, 0.99999], () => boilingPoint(sucrose(1))],
    ['massG', -1, [0, 1e9], () => boilingPoint(impossible(-1))],
    ['massG', 1e9 + 1, [0, 1e9], () => boilingPoint(impossible(1e9 + 1))],
    ['temperatureC', 4.9, [5, 370], () => drySolidsAtBoil(sucrose(0.5), { temperatureC: 4.9 })],
    ['temperatureC', 370.1, [5, 370], () => drySolidsAtBoil(sucrose(0.5), { temperatureC: 370.1 })],
    [
      'pressurePa',
      872,
      pan,
      () => drySolidsAtBoil(sucrose(0.5), { temperatureC: 120, pressurePa: 872 }),
    ],
    [
      'pressurePa',
      872,
      pan,
      () =>
        cookTarget(sucrose(0.5), {
          temperatureC: 120,
          fromPressurePa: 101_325,
          toPressurePa: 872,
        }),
    ],
    ['temperatureC', -0.1, [0, 370], () => waterActivity(sucrose(0.5), { temperatureC: -0.1 })],
    ['temperatureC', 370.1, [0, 370], () => waterActivity(sucrose(0.5), { temperatureC: 370.1 })],
    [
      'dissolvedMassFraction',
      1,
      [0, 0.99999],
      () => waterActivity(sucrose(1), { temperatureC: 25 }),
    ],
  ])('is a %s of %d', (parameter, received, limits, ask) => {
    expect(ask).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter, received, limits }),
    );
  });

  it('is a mass so dry that no heat makes it boil', () => {
    expect(() => boilingPoint(sucrose(0.99999))).toThrow(
      expect.objectContaining({
        code: 'outside-range',
        parameter: 'waterActivity',
        limits: [101_325 / 21_000_000, 1],
      }),
    );
  });
});

describe('the ends of what a boil can mean', () => {
  it('is any pressure, and any temperature the steam equation reaches', () => {
    expect(boilingPoint(sucrose(0), { pressurePa: 873 }).boilingPointC).toBeCloseTo(5, 1);
    expect(drySolidsAtBoil(sucrose(0.5), { temperatureC: 5, pressurePa: 873 })).toMatchObject({
      kind: 'none',
      reason: 'below-the-boil',
    });
    expect(drySolidsAtBoil(sucrose(0.5), { temperatureC: 370, pressurePa: 873 })).toEqual({
      kind: 'none',
      reason: 'off-scale-dry',
    });
    const hot = drySolidsAtBoil(sucrose(0.5), { temperatureC: 370, pressurePa: 21_000_000 });
    if (isNone(hot)) throw new Error(hot.reason);
    // Its band reaches past the steam equation on the high side and to plain water on the low.
    expect(hot.band[0]).toBe(0);
    expect(hot.band[1]).toBeGreaterThanOrEqual(hot.drySolidsMassFraction);
    for (const temperatureC of [0, 370]) {
      const { waterActivity: found } = waterActivity(sucrose(0.5), { temperatureC });
      expect(found).toBeGreaterThan(0.9);
      expect(found).toBeLessThan(1);
    }
  });

  it('weighs a thousand tonnes, and takes no notice of an empty jar', () => {
    const heavy = mixture([
      { ingredient: 'sucrose', massG: 1e9 },
      { ingredient: 'water', massG: 1e9 },
    ]);
    const at = boilingPoint(sucrose(0.5)).boilingPointC;
    expect(boilingPoint(heavy).boilingPointC).toBeCloseTo(at, 9);
    const jar: Mixture = {
      ...sucrose(0.5),
      solids: [
        { kind: 'pure', species: 'moon-sugar' as SpeciesId, massG: 0 },
        ...sucrose(0.5).solids,
      ],
    };
    expect(boilingPoint(jar)).toEqual(boilingPoint(sucrose(0.5)));
  });

  it('boils a trace of sugar at hardly more than water', () => {
    const trace = boilingPoint(sucrose(1e-9));
    expect(trace.boilingPointElevationK).toBeCloseTo(0, 6);
    expect(trace.pressurePa).toBe(101_325);
  });
});

describe('what a boil warns of', () => {
  it('warns of solids, pressures and heat nothing was held against', () => {
    expect(boilingPoint(sucrose(0.996), { pressurePa: 1_500 }).warnings).toEqual([
      {
        code,
        parameter: 'dissolvedMassFraction',
        value: expect.closeTo(0.996, 12),
        limits: [0, 0.995],
      },
      { code, parameter: 'pressurePa', value: 1_500, limits: [2_000, 120_000] },
    ]);
    expect(boilingPoint(sucrose(0.5), { pressurePa: 2_000_000 }).warnings).toEqual([
      { code, parameter: 'temperatureC', value: expect.any(Number), limits: [20, 200] },
      { code, parameter: 'pressurePa', value: 2_000_000, limits: [2_000, 120_000] },
      {
        code: 'sugar-decomposes',
        parameter: 'temperatureC',
        value: expect.any(Number),
        limits: [20, 165],
        subject: 'sucrose',
      },
    ]);
    for (const pressurePa of [2_000, 120_000]) {
      expect(boilingPoint(sucrose(0.9), { pressurePa }).warnings).toEqual([]);
    }
  });

  it('lets sucrose stand 165 °C and not a degree more', () => {
    const warned = (temperatureC: number) =>
      waterActivity(sucrose(0.5), { temperatureC }).warnings.map((one) => one.code);
    expect(warned(165)).toEqual([]);
    expect(warned(165.1)).toEqual(['sugar-decomposes']);
    const isomalt = solutionOf('isomalt', { drySolidsMassFraction: 0.5 });
    expect(waterActivity(isomalt, { temperatureC: 190 }).warnings).toEqual([]);
  });

  it('names what water activity was not held against', () => {
    expect(waterActivity(sucrose(0.996), { temperatureC: 19 }).warnings).toEqual([
      {
        code,
        parameter: 'dissolvedMassFraction',
        value: expect.closeTo(0.996, 12),
        limits: [0, 0.995],
      },
      { code, parameter: 'temperatureC', value: 19, limits: [20, 200] },
    ]);
    const isomalt = solutionOf('isomalt', { drySolidsMassFraction: 0.5 });
    expect(waterActivity(isomalt, { temperatureC: 201 }).warnings).toEqual([
      { code, parameter: 'temperatureC', value: 201, limits: [20, 200] },
    ]);
  });

  it('names the kitchen a temperature comes from', () => {
    const target = cookTarget(solutionOf('isomalt', { drySolidsMassFraction: 0.5 }), {
      temperatureC: 201,
      fromPressurePa: 130_000,
      toPressurePa: 101_325,
    });
    if (isNone(target)) throw new Error(target.reason);
    expect(target.warnings.slice(-2)).toEqual([
      { code, parameter: 'fromTemperatureC', value: 201, limits: [20, 200] },
      { code, parameter: 'fromPressurePa', value: 130_000, limits: [2_000, 120_000] },
    ]);
  });
});

describe('what water activity is made of', () => {
  const ln = (species: SpeciesId, dissolved: number, temperatureC = 25) =>
    Math.log(
      waterActivity(solutionOf(species, { drySolidsMassFraction: dissolved }), { temperatureC })
        .waterActivity,
    );

  it('counts two particles of salt in thin brine, one of citric acid and four of its salt', () => {
    // Raoult: a hundredth of a per cent of solids, in mol beside the mol of water.
    const water = 0.9999 / 18.01528;
    for (const [species, particles, molarMass] of [
      ['sodium-chloride', 2, 58.44],
      ['citric-acid', 1, 192.12],
      ['sodium-citrate', 4, 258.07],
      ['xylitol', 1, 152.146],
    ] as const) {
      const expected = -((1e-4 * particles) / molarMass) / water;
      expect(ln(species, 1e-4) / expected).toBeCloseTo(1, 2);
    }
  });

  it('widens the band by what a polyol and an unmeasured interaction leave open', () => {
    const widths = (['sucrose', 'isomalt', 'xylitol', 'glucose'] as const).map((species) =>
      halfWidth(boilingPoint(solutionOf(species, { drySolidsMassFraction: 0.3 })).band),
    );
    // Half a kelvin at 30 % of sucrose; a third more of a sugar alcohol.
    expect(widths[0]).toBeCloseTo(0.5, 9);
    expect(widths[1]).toBeGreaterThan(0.6665);
    expect(widths[1]).toBeLessThan(0.69);
    expect(widths[2]).toBeGreaterThan(0.6665);
    expect(widths[3]).toBeGreaterThan(0.5);
    expect(widths[3]).toBeLessThan(0.51);
  });
});
