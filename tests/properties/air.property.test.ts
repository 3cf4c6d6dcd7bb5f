import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  absolutePressure,
  isNone,
  ModelRangeError,
  standardPressure,
  stationPressure,
} from 'vitrose';

const elevationM = fc.double({ min: -2_000, max: 11_000, noNaN: true });
const seaLevelPressurePa = fc.double({ min: 85_000, max: 110_000, noNaN: true });
const pressurePa = fc.double({ min: 1, max: 200_000, noNaN: true });

describe('air', () => {
  it('thins with every metre climbed, whatever the weather', () => {
    fc.assert(
      fc.property(elevationM, elevationM, seaLevelPressurePa, (a, b, weatherPa) => {
        fc.pre(Math.abs(a - b) > 0.01);
        const [lower, higher] = a < b ? [a, b] : [b, a];
        expect(standardPressure(higher).pressurePa).toBeLessThan(
          standardPressure(lower).pressurePa,
        );
        const at = (height: number): number =>
          stationPressure({ seaLevelPressurePa: weatherPa, elevationM: height }).pressurePa;
        expect(at(higher)).toBeLessThan(at(lower));
      }),
    );
  });

  it('weighs more at the pan when the barometer stands higher', () => {
    fc.assert(
      fc.property(elevationM, seaLevelPressurePa, seaLevelPressurePa, (height, a, b) => {
        fc.pre(Math.abs(a - b) > 0.1);
        const at = (weatherPa: number): number =>
          stationPressure({ seaLevelPressurePa: weatherPa, elevationM: height }).pressurePa;
        expect(at(Math.max(a, b))).toBeGreaterThan(at(Math.min(a, b)));
      }),
    );
  });

  it('is the standard atmosphere when the weather is standard', () => {
    fc.assert(
      fc.property(fc.double({ min: -500, max: 5_000, noNaN: true }), (height) => {
        const { pressurePa: standardPa } = standardPressure(height);
        const found = stationPressure({ seaLevelPressurePa: 101_325, elevationM: height });
        expect(Math.abs(found.pressurePa - standardPa)).toBeLessThan(50);
      }),
    );
  });

  it('and what a gauge took away come back to the air there was', () => {
    fc.assert(
      fc.property(pressurePa, pressurePa, (airPa, underVacuumPa) => {
        const inside = absolutePressure({ pressurePa: airPa, underVacuumPa });
        expect(isNone(inside)).toBe(underVacuumPa >= airPa);
        if (isNone(inside)) return;
        expect(inside.pressurePa).toBeGreaterThan(0);
        expect(inside.pressurePa + underVacuumPa).toBeCloseTo(airPa, 6);
      }),
    );
  });

  it('refuses weather nobody has seen', () => {
    const outside = fc.oneof(fc.double({ max: 84_999 }), fc.double({ min: 110_001 }));
    fc.assert(
      fc.property(outside, (value) => {
        expect(() => stationPressure({ seaLevelPressurePa: value, elevationM: 0 })).toThrow(
          ModelRangeError,
        );
      }),
    );
  });

  it('refuses what it cannot know, and says why', () => {
    const outside = fc.oneof(
      fc.double({ min: 11_001 }),
      fc.double({ max: -2_001 }),
      fc.constant(Number.NaN),
    );
    fc.assert(
      fc.property(outside, (value) => {
        expect(() => standardPressure(value)).toThrow(ModelRangeError);
        expect(() => stationPressure({ seaLevelPressurePa: 101_325, elevationM: value })).toThrow(
          ModelRangeError,
        );
      }),
    );
  });
});
