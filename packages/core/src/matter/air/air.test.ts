import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { absolutePressure } from './gauge-vacuum.js';
import {
  SEA_LEVEL_PRESSURE_PA,
  STANDARD_PRESSURE_CONSTANTS,
  standardPressure,
} from './standard-pressure.js';
import { stationPressure } from './station-pressure.js';

describe('standardPressure', () => {
  it('begins at the sea', () => {
    expect(standardPressure(0).pressurePa).toBe(SEA_LEVEL_PRESSURE_PA);
    expect(STANDARD_PRESSURE_CONSTANTS.seaLevelPressurePa.value).toBe(SEA_LEVEL_PRESSURE_PA);
  });

  it('warns above the heights it was held against', () => {
    expect(standardPressure(10_500).warnings).toEqual([
      {
        code: 'outside-tested-range',
        parameter: 'elevationM',
        value: 10_500,
        limits: [-500, 10_000],
      },
    ]);
    expect(standardPressure(-2_000).warnings).toMatchObject([{ value: -2_000 }]);
    for (const elevationM of [-500, 10_000]) {
      expect(standardPressure(elevationM).warnings).toEqual([]);
    }
  });

  it('ends with the layer', () => {
    expect(standardPressure(11_000).pressurePa).toBeCloseTo(22_632, 0);
    for (const elevationM of [-2_001, 11_001]) {
      expect(() => standardPressure(elevationM)).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'elevationM',
          received: elevationM,
          limits: [-2_000, 11_000],
        }),
      );
    }
  });
});

describe('stationPressure', () => {
  it('changes nothing at the sea', () => {
    const { pressurePa } = stationPressure({ seaLevelPressurePa: 99_000, elevationM: 0 });
    expect(pressurePa).toBeCloseTo(99_000, 6);
  });

  it.each([
    // What a barometer at the pan shows a mile up.
    ['seaLevelPressurePa', 83_400, [85_000, 110_000]],
    ['seaLevelPressurePa', 110_001, [85_000, 110_000]],
    ['elevationM', -2_001, [-2_000, 11_000]],
    ['elevationM', 11_001, [-2_000, 11_000]],
  ])('refuses a %s of %d', (parameter, received, limits) => {
    const report = { seaLevelPressurePa: 101_325, elevationM: 1_609, [parameter]: received };
    expect(() => stationPressure(report)).toThrow(ModelRangeError);
    expect(() => stationPressure(report)).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter, received, limits }),
    );
  });

  it('answers at its ends', () => {
    for (const seaLevelPressurePa of [85_000, 110_000]) {
      const { pressurePa } = stationPressure({ seaLevelPressurePa, elevationM: 0 });
      expect(pressurePa).toBeCloseTo(seaLevelPressurePa, 6);
    }
  });

  it('warns of a storm, and of a high mountain', () => {
    const { warnings } = stationPressure({ seaLevelPressurePa: 94_000, elevationM: 6_000 });
    const code = 'outside-tested-range';
    expect(warnings).toEqual([
      { code, parameter: 'seaLevelPressurePa', value: 94_000, limits: [95_000, 105_000] },
      { code, parameter: 'elevationM', value: 6_000, limits: [-500, 5_000] },
    ]);
    for (const report of [
      { seaLevelPressurePa: 95_000, elevationM: -500 },
      { seaLevelPressurePa: 105_000, elevationM: 5_000 },
    ]) {
      expect(stationPressure(report).warnings).toEqual([]);
    }
  });
});

describe('absolutePressure', () => {
  it('counts down from the air', () => {
    expect(absolutePressure({ pressurePa: 101_325, underVacuumPa: 95_992 })).toEqual({
      pressurePa: 5_333,
      warnings: [],
    });
  });

  it('cannot go deeper than the air', () => {
    for (const underVacuumPa of [86_660, 95_992]) {
      expect(absolutePressure({ pressurePa: 86_660, underVacuumPa })).toEqual({
        kind: 'none',
        reason: 'deeper-than-the-air',
      });
    }
  });

  it.each([
    ['underVacuumPa', -1, [0, 200_000]],
    ['underVacuumPa', 200_001, [0, 200_000]],
    ['pressurePa', 0, [1, 200_000]],
    ['pressurePa', 200_001, [1, 200_000]],
  ])('refuses a %s of %d', (parameter, received, limits) => {
    const cooker = { pressurePa: 101_325, underVacuumPa: 95_992, [parameter]: received };
    expect(() => absolutePressure(cooker)).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter, received, limits }),
    );
  });

  it('leaves the air as it is where the gauge shows nothing', () => {
    for (const pressurePa of [1, 200_000]) {
      expect(absolutePressure({ pressurePa, underVacuumPa: 0 })).toEqual({
        pressurePa,
        warnings: [],
      });
    }
  });
});
