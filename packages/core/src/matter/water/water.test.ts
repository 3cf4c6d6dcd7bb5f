import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { waterBoilingPoint } from './boiling-point.js';
import { LATENT_HEAT_TABLE, waterLatentHeat } from './latent-heat.js';
import { waterVapourPressure } from './vapour-pressure.js';

describe('waterVapourPressure', () => {
  it.each([
    [273.16, 611.657],
    [373.1243, 101_325],
    [647.096, 22_064_000],
  ])('reproduces the verification value at %f K', (temperatureK, pressurePa) => {
    const { vapourPressurePa, warnings } = waterVapourPressure(temperatureK - 273.15);
    expect(Math.abs(vapourPressurePa / pressurePa - 1)).toBeLessThanOrEqual(5e-6);
    expect(warnings).toEqual([]);
  });

  it.each([
    [300, 3_536.58941],
    [500, 2_638_897.76],
  ])('lies within 0.02 %% of the industrial formulation at %d K', (temperatureK, pressurePa) => {
    const { vapourPressurePa } = waterVapourPressure(temperatureK - 273.15);
    expect(Math.abs(vapourPressurePa / pressurePa - 1)).toBeLessThanOrEqual(2e-4);
  });

  it('knows nothing of ice, nor of what lies past the critical point', () => {
    for (const temperatureC of [0, -10, 374, Number.NaN]) {
      expect(() => waterVapourPressure(temperatureC)).toThrow(ModelRangeError);
    }
  });
});

describe('waterBoilingPoint', () => {
  it('is 99.974 °C under the standard atmosphere, not 100', () => {
    expect(waterBoilingPoint(101_325).boilingPointC).toBeCloseTo(99.974, 3);
  });

  it('answers at both ends of its domain', () => {
    expect(waterBoilingPoint(873).boilingPointC).toBeCloseTo(5.0, 1);
    expect(waterBoilingPoint(21_000_000).boilingPointC).toBeCloseTo(369.8, 1);
  });

  it('refuses a pressure in another unit', () => {
    for (const pressure of [760, 29.92, -1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => waterBoilingPoint(pressure)).toThrow(ModelRangeError);
    }
  });
});

describe('waterLatentHeat', () => {
  it('is its table at the points of the table', () => {
    for (const [temperatureC, latentHeatKJPerKg] of LATENT_HEAT_TABLE.points) {
      expect(waterLatentHeat(temperatureC).latentHeatKJPerKg).toBeCloseTo(latentHeatKJPerKg, 9);
    }
  });

  it('refuses to go on beyond it', () => {
    for (const temperatureC of [0, 201, Number.NaN]) {
      expect(() => waterLatentHeat(temperatureC)).toThrow(ModelRangeError);
    }
  });
});

it.each([
  ['temperatureC', 0, [0.01, 373.946], waterVapourPressure],
  ['temperatureC', 373.95, [0.01, 373.946], waterVapourPressure],
  ['pressurePa', 872, [873, 21_000_000], waterBoilingPoint],
  ['pressurePa', 21_000_001, [873, 21_000_000], waterBoilingPoint],
  ['temperatureC', 0, [0.01, 200], waterLatentHeat],
  ['temperatureC', 200.1, [0.01, 200], waterLatentHeat],
])('says that a %s of %d lies beyond its ends', (parameter, received, limits, ask) => {
  expect(() => ask(received)).toThrow(
    expect.objectContaining({ code: 'outside-range', parameter, received, limits }),
  );
});

it('has nothing to warn of inside them', () => {
  expect(waterBoilingPoint(101_325).warnings).toEqual([]);
  expect(waterLatentHeat(100).warnings).toEqual([]);
});
