import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { baumeFromBrix, brixFromBaume } from './baume.js';
import { brixFromRefractiveIndex, refractiveIndexFromBrix } from './refractive-index.js';
import { brixTemperatureCorrection } from './refractometer-temperature.js';
import { brixFromSpecificGravity, specificGravityFromBrix } from './specific-gravity.js';
import { brixFromDensity } from './sucrose-solution.js';
import { waterDensity } from './water-density.js';

describe('waterDensity', () => {
  it.each([
    [4, 999.972],
    [20, 998.203],
    [100, 958.345],
  ])('at %d °C is %f kg/m³', (temperatureC, density) => {
    const { densityKgPerM3, warnings } = waterDensity(temperatureC);
    expect(densityKgPerM3).toBeCloseTo(density, 3);
    expect(warnings).toEqual([]);
  });

  it('warns under pressure and refuses ice', () => {
    expect(waterDensity(101).warnings).toMatchObject([{ parameter: 'temperatureC', value: 101 }]);
    for (const received of [-1, 151, Number.NaN]) {
      expect(() => waterDensity(received)).toThrow(
        expect.objectContaining({ parameter: 'temperatureC', received }),
      );
    }
  });
});

describe('brixFromDensity', () => {
  it('finds the strength a density belongs to', () => {
    const { brix, warnings } = brixFromDensity({ densityKgPerM3: 1_229.65, temperatureC: 20 });
    expect(brix).toBeCloseTo(50, 2);
    expect(warnings).toEqual([]);
  });

  it('warns where the density is that of a melt, or of hot syrup', () => {
    const { warnings } = brixFromDensity({ densityKgPerM3: 1_450, temperatureC: 110 });
    expect(warnings.map(({ parameter }) => parameter)).toEqual(['brix', 'temperatureC']);
  });

  it('refuses less than water and more than sugar', () => {
    for (const received of [998, 1_600, Number.NaN]) {
      expect(() => brixFromDensity({ densityKgPerM3: received, temperatureC: 20 })).toThrow(
        expect.objectContaining({ parameter: 'densityKgPerM3', received }),
      );
    }
    expect(() => brixFromDensity({ densityKgPerM3: 1_200, temperatureC: -1 })).toThrow(
      expect.objectContaining({ parameter: 'temperatureC' }),
    );
  });
});

describe.each([
  ['specificGravity', specificGravityFromBrix, brixFromSpecificGravity, 1.31893, 4, 1.51861],
  ['baume', baumeFromBrix, brixFromBaume, 35.0621, 3, 49.518],
  ['refractiveIndex', refractiveIndexFromBrix, brixFromRefractiveIndex, 1.45348, 5, 1.532],
] as const)('%s', (name, forward, back, at65, digits, at95) => {
  const of = (brix: number) => Object.values(forward(brix))[0] as number;

  it('at 65 °Bx and at the end is as worked out by hand', () => {
    expect(of(65)).toBeCloseTo(at65, digits);
    expect(of(95)).toBeCloseTo(at95, digits);
  });

  it.each([0, 10, 65, 85, 90, 95])('leads back to %d °Bx', (brix) => {
    expect(back(of(brix)).brix).toBeCloseTo(brix, 6);
  });

  it('warns over 85 °Bx and not below', () => {
    const limits = { parameter: 'brix', limits: [0, 85] };
    expect(forward(85).warnings).toEqual([]);
    expect(forward(86).warnings).toMatchObject([{ ...limits, value: 86 }]);
    expect(back(of(84.9)).warnings).toEqual([]);
    expect(back(of(86)).warnings).toMatchObject([limits]);
  });

  it('refuses over 95 °Bx, under water, and no number', () => {
    for (const received of [-0.1, 95.1, Number.NaN]) {
      expect(() => forward(received)).toThrow(
        expect.objectContaining({ parameter: 'brix', received }),
      );
    }
    for (const received of [of(0) - 0.001, at95 + 0.001, Number.NaN]) {
      expect(() => back(received)).toThrow(expect.objectContaining({ parameter: name, received }));
    }
  });
});

describe('refractiveIndexFromBrix', () => {
  it('reads the run-on table in straight lines, without a jump at 85 °Bx', () => {
    const of = (brix: number) => refractiveIndexFromBrix(brix).refractiveIndex;
    expect(of(90)).toBeCloseTo(1.5177, 12);
    expect(of(92.5)).toBeCloseTo((1.5177 + 1.532) / 2, 12);
    expect(of(85 + 1e-9) - of(85)).toBeLessThan(1e-11);
  });
});

describe('brixTemperatureCorrection', () => {
  it('takes off below 20 °C, adds above, and does nothing at 20', () => {
    const at = (temperatureC: number) => {
      const answer = brixTemperatureCorrection({ brix: 30, temperatureC });
      if ('reason' in answer) throw new Error(answer.reason);
      return answer;
    };
    expect(at(10).correctionBrix).toBeCloseTo(-0.69, 2);
    expect(at(20).correctionBrix).toBe(0);
    // Recalled: +0.38.
    expect(at(25).correctionBrix).toBeCloseTo(0.38, 2);
    const half = ({ band: [low, high] }: ReturnType<typeof at>) => (high - low) / 2;
    expect(half(at(10))).toBeCloseTo(0.02, 12);
    expect(half(at(20))).toBeCloseTo(0.02, 12);
    expect(half(at(22.5))).toBeCloseTo(0.035, 12);
    expect(half(at(30))).toBeCloseTo(0.05, 12);
    expect(at(20).warnings).toEqual([]);
    expect(at(20.1).warnings).toMatchObject([{ parameter: 'temperatureC', limits: [10, 20] }]);
  });

  it('warns beyond the printed readings', () => {
    for (const brix of [9.9, 75.1]) {
      expect(brixTemperatureCorrection({ brix, temperatureC: 15 })).toMatchObject({
        warnings: [{ parameter: 'brix', value: brix, limits: [10, 75] }],
      });
    }
  });

  it('does not read hot syrup, nor cold', () => {
    const temperaturesC = [10, 30];
    for (const temperatureC of [30.1, 110, 200]) {
      expect(brixTemperatureCorrection({ brix: 70, temperatureC })).toEqual({
        kind: 'none',
        reason: 'too-hot-to-read',
        temperaturesC,
      });
    }
    expect(brixTemperatureCorrection({ brix: 70, temperatureC: 9.9 })).toEqual({
      kind: 'none',
      reason: 'too-cold-to-read',
      temperaturesC,
    });
  });

  it('refuses what no prism shows', () => {
    for (const received of [-0.1, 95.1, Number.NaN]) {
      expect(() => brixTemperatureCorrection({ brix: received, temperatureC: 20 })).toThrow(
        expect.objectContaining({ parameter: 'brix', received }),
      );
    }
    for (const received of [-21, 201, Number.NaN]) {
      expect(() => brixTemperatureCorrection({ brix: 50, temperatureC: received })).toThrow(
        ModelRangeError,
      );
    }
  });
});
