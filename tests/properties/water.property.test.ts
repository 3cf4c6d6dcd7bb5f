import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ModelRangeError, waterBoilingPoint, waterLatentHeat, waterVapourPressure } from 'vitrose';

const temperatureC = fc.double({ min: 5, max: 370, noNaN: true });
const beyond = (low: number, high: number) =>
  fc.oneof(
    fc.double({ max: low, noNaN: true }).filter((value) => value < low),
    fc.double({ min: high, noNaN: true }).filter((value) => value > high),
    fc.constant(Number.NaN),
  );

describe('water', () => {
  it('has more vapour the hotter it is', () => {
    fc.assert(
      fc.property(temperatureC, temperatureC, (a, b) => {
        fc.pre(Math.abs(a - b) > 1e-6);
        const [cooler, hotter] = a < b ? [a, b] : [b, a];
        expect(waterVapourPressure(hotter).vapourPressurePa).toBeGreaterThan(
          waterVapourPressure(cooler).vapourPressurePa,
        );
      }),
    );
  });

  it('boils at the temperature whose vapour pressure it is put under', () => {
    fc.assert(
      fc.property(fc.double({ min: 5.1, max: 369.7, noNaN: true }), (boilsAtC) => {
        const { vapourPressurePa } = waterVapourPressure(boilsAtC);
        expect(Math.abs(waterBoilingPoint(vapourPressurePa).boilingPointC - boilsAtC)).toBeLessThan(
          1e-8,
        );
      }),
    );
  });

  it('takes less heat to turn into steam the hotter it is', () => {
    const inTable = fc.double({ min: 0.01, max: 200, noNaN: true });
    fc.assert(
      fc.property(inTable, inTable, (a, b) => {
        fc.pre(Math.abs(a - b) > 1e-6);
        const [cooler, hotter] = a < b ? [a, b] : [b, a];
        expect(waterLatentHeat(hotter).latentHeatKJPerKg).toBeLessThan(
          waterLatentHeat(cooler).latentHeatKJPerKg,
        );
      }),
    );
  });

  it('takes as much heat as its vapour pressure says, by Clausius and Clapeyron', () => {
    // An ideal vapour of no liquid volume: good to 1 % up to 60 °C.
    fc.assert(
      fc.property(fc.double({ min: 5, max: 60, noNaN: true }), (atC) => {
        const rise = Math.log(
          waterVapourPressure(atC + 0.01).vapourPressurePa /
            waterVapourPressure(atC - 0.01).vapourPressurePa,
        );
        const heatKJPerKg = ((8.314462 / 18.01528) * (atC + 273.15) ** 2 * rise) / 0.02;
        expect(Math.abs(heatKJPerKg / waterLatentHeat(atC).latentHeatKJPerKg - 1)).toBeLessThan(
          0.01,
        );
      }),
    );
  });

  it('refuses what it cannot know', () => {
    fc.assert(
      fc.property(beyond(0.01, 373.946), (value) => {
        expect(() => waterVapourPressure(value)).toThrow(ModelRangeError);
      }),
    );
    fc.assert(
      fc.property(beyond(873, 21_000_000), (value) => {
        expect(() => waterBoilingPoint(value)).toThrow(ModelRangeError);
      }),
    );
    fc.assert(
      fc.property(beyond(0.01, 200), (value) => {
        expect(() => waterLatentHeat(value)).toThrow(ModelRangeError);
      }),
    );
  });
});
