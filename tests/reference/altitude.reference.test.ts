import {
  stagesAltitudeComputedTable as becomesTable,
  stagesAltitudeCsuTable as csuTable,
  stagesAltitudeRulesTable as rulesTable,
  boilingAltitudeShiftTable as shiftTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  altitudeRules,
  boilingPoint,
  celsiusFromFahrenheit,
  fahrenheitDifferenceFromKelvin,
  fahrenheitFromCelsius,
  isNone,
  metresFromFeet,
  solutionOf,
  stageLadder,
  temperatureAtKitchen,
} from 'vitrose';

/** °F in a kitchen at an elevation in feet, for °F at sea level. */
function becomesF(seaLevelF: number, elevationFt: number): number {
  const here = temperatureAtKitchen({
    temperatureC: celsiusFromFahrenheit(seaLevelF),
    elevationM: metresFromFeet(elevationFt),
  });
  if (isNone(here)) throw new Error(here.reason);
  return fahrenheitFromCelsius(here.temperatureC);
}

describe(`temperatureAtKitchen against ${shiftTable.id}: ${shiftTable.source.title}`, () => {
  const stages = [
    ['shiftSoftBallF', 0.85],
    ['shiftFirmBallF', 0.87],
    ['shiftHardBallF', 0.92],
    ['shiftSoftCrackF', 0.95],
    ['shiftHardCrackF', 0.975],
  ] as const;

  it.each(shiftTable.rows)(
    'takes off what the row of $elevationFt ft says, within 0.1 °F',
    (row) => {
      for (const [column, drySolidsMassFraction] of stages) {
        const mixture = solutionOf('sucrose', { drySolidsMassFraction });
        const { boilingPointC } = boilingPoint(mixture);
        const here = temperatureAtKitchen({
          temperatureC: boilingPointC,
          pressurePa: row.pressurePa,
        });
        if (isNone(here)) throw new Error(here.reason);
        const shiftF = -fahrenheitDifferenceFromKelvin(here.shiftK);
        expect(Math.abs(shiftF - row[column]), column).toBeLessThanOrEqual(0.1);
      }
    },
  );

  it.each(shiftTable.rows)(
    'knows the kitchen rule and lost boiling water at $elevationFt ft',
    (row) => {
      const rules = altitudeRules({
        temperatureC: 145,
        elevationM: metresFromFeet(row.elevationFt),
      });
      const ruleF = fahrenheitDifferenceFromKelvin(145 - rules.perThousandFeet.temperatureC);
      const waterF = fahrenheitDifferenceFromKelvin(145 - rules.boilingWater.temperatureC);
      expect(ruleF).toBeCloseTo(row.shiftByRuleF, 6);
      expect(Math.abs(waterF - row.shiftWaterF)).toBeLessThanOrEqual(0.06);
    },
  );
});

describe(`temperatureAtKitchen against ${becomesTable.id}: ${becomesTable.source.title}`, () => {
  const columns = [
    ['seaLevel234BecomesF', 234],
    ['seaLevel240BecomesF', 240],
    ['seaLevel248BecomesF', 248],
    ['seaLevel266BecomesF', 266],
    ['seaLevel290BecomesF', 290],
    ['seaLevel300BecomesF', 300],
    ['seaLevel310BecomesF', 310],
  ] as const;

  it.each(becomesTable.rows)(
    'moves every stage as the row of $elevationFt ft, within 0.1 °F',
    (row) => {
      for (const [column, seaLevelF] of columns) {
        expect(
          Math.abs(becomesF(seaLevelF, row.elevationFt) - row[column]),
          column,
        ).toBeLessThanOrEqual(0.1);
      }
    },
  );

  it('turns 238 into 228 and 300 into 289 °F a mile up', () => {
    expect(Math.abs(becomesF(238, 5_280) - 228)).toBeLessThanOrEqual(1);
    expect(Math.abs(becomesF(300, 5_280) - 289)).toBeLessThanOrEqual(1);
  });

  it('leaves clear and brown liquid standing', () => {
    for (const elevationFt of [0, 5_000, 10_000]) {
      expect(becomesF(320, elevationFt)).toBeCloseTo(320, 9);
      expect(becomesF(345, elevationFt)).toBeCloseTo(345, 9);
      const ladder = stageLadder({ elevationM: metresFromFeet(elevationFt) });
      const dry = ladder.filter((rung) => rung.lowSeaLevelC >= 160);
      expect(dry).toHaveLength(3);
      for (const rung of dry) {
        expect(rung.lowC).toBe(rung.lowSeaLevelC);
        expect(rung.highC).toBe(rung.highSeaLevelC);
      }
    }
  });

  it('differs from constant water activity as the notes of the table say', () => {
    const { constantWaterActivity } = altitudeRules({
      temperatureC: celsiusFromFahrenheit(300),
      elevationM: metresFromFeet(5_000),
    });
    expect(fahrenheitFromCelsius(constantWaterActivity.temperatureC)).toBeCloseTo(287.9, 1);
  });
});

describe(`altitudeRules against ${rulesTable.id}`, () => {
  it('fall short by 0.7 to 1.8 °F at 5 000 ft where boiling water is the measure', () => {
    const errorF = (seaLevelF: number) =>
      fahrenheitDifferenceFromKelvin(
        altitudeRules({
          temperatureC: celsiusFromFahrenheit(seaLevelF),
          elevationM: metresFromFeet(5_000),
        }).boilingWater.errorK,
      );
    expect(errorF(237)).toBeCloseTo(0.7, 1);
    expect(errorF(305)).toBeCloseTo(1.8, 1);
  });
});

describe(`stageLadder against ${csuTable.id}: ${csuTable.source.title}`, () => {
  // The printed columns contradict each other; only these two cells are fit to be held against.
  it.each([
    ['soft-ball', 0.4],
    ['hard-crack', 1.4],
  ] as const)('meets the lower end of %s at 5 000 ft within %f °F', (stage, worstF) => {
    const row = csuTable.rows.find((one) => one.stage === stage && one.elevationFt === 5_000);
    const rung = stageLadder({ elevationM: metresFromFeet(5_000) }).find(({ id }) => id === stage);
    const lowF = fahrenheitFromCelsius(rung?.lowC ?? 0);
    expect(Math.abs(lowF - (row?.lowF ?? 0))).toBeLessThanOrEqual(worstF);
  });
});
