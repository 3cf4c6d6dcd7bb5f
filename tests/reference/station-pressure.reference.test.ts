import { boilingPressureReductionTable as table } from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import { paFromHpa, standardPressure, stationPressure, waterBoilingPoint } from 'vitrose';

describe(`stationPressure against ${table.id}, ${table.source.locator}`, () => {
  it.each(table.rows)(
    'gives $stationPressureHPa hPa at $elevationM m under $seaLevelPressureHPa hPa',
    (row) => {
      const { pressurePa, warnings } = stationPressure({
        seaLevelPressurePa: paFromHpa(row.seaLevelPressureHPa),
        elevationM: row.elevationM,
      });
      expect(Math.abs(pressurePa - paFromHpa(row.stationPressureHPa))).toBeLessThanOrEqual(1);
      expect(
        Math.abs(waterBoilingPoint(pressurePa).boilingPointC - row.waterBoilingPointC),
      ).toBeLessThanOrEqual(0.01);
      expect(warnings).toEqual([]);
    },
  );
});

/** All the weather and heights no warning comes with, in even steps. */
function* tested(): Generator<{ seaLevelPressurePa: number; elevationM: number }> {
  for (
    let seaLevelPressurePa = 95_000;
    seaLevelPressurePa <= 105_000;
    seaLevelPressurePa += 1_000
  ) {
    for (let elevationM = -500; elevationM <= 5_000; elevationM += 250) {
      yield { seaLevelPressurePa, elevationM };
    }
  }
}

describe('stationPressure, wherever it does not warn', () => {
  it('is what the altimeter setting is printed for, the other way round', () => {
    for (const report of tested()) {
      const { pressurePa, warnings } = stationPressure(report);
      expect(warnings).toEqual([]);
      const hPa = pressurePa / 100;
      const setting = hPa * (1 + (8.4229e-5 * report.elevationM) / hPa ** 0.19028) ** 5.2553;
      expect(Math.abs(100 * setting - report.seaLevelPressurePa)).toBeLessThanOrEqual(10);
    }
  });

  it('stays within 1 hPa of scaling the standard atmosphere up to 2 000 m in ordinary weather', () => {
    for (const report of tested()) {
      if (report.seaLevelPressurePa < 99_000 || report.seaLevelPressurePa > 103_000) continue;
      if (report.elevationM > 2_000) continue;
      const scaled =
        (report.seaLevelPressurePa / 101_325) * standardPressure(report.elevationM).pressurePa;
      expect(Math.abs(stationPressure(report).pressurePa - scaled)).toBeLessThanOrEqual(100);
    }
  });
});
