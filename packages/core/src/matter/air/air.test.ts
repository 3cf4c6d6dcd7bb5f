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
  });
});

describe('stationPressure', () => {
  it('changes nothing at the sea', () => {
    const { pressurePa } = stationPressure({ seaLevelPressurePa: 99_000, elevationM: 0 });
    expect(pressurePa).toBeCloseTo(99_000, 6);
  });

  it('refuses a pressure that was not reduced', () => {
    expect(() => stationPressure({ seaLevelPressurePa: 83_400, elevationM: 1_609 })).toThrow(
      ModelRangeError,
    );
  });

  it('warns of a storm, and of a high mountain', () => {
    const warned = stationPressure({ seaLevelPressurePa: 94_000, elevationM: 6_000 }).warnings;
    expect(warned.map((warning) => warning.parameter)).toEqual([
      'seaLevelPressurePa',
      'elevationM',
    ]);
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

  it('refuses a gauge that reads above the air', () => {
    expect(() => absolutePressure({ pressurePa: 101_325, underVacuumPa: -1 })).toThrow(
      ModelRangeError,
    );
  });
});
