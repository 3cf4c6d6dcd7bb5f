import { boilingAltitudeWaterTable, boilingAtmosphereTable as table } from '@vitrose/evidence';
import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import {
  celsiusFromFahrenheit,
  metresFromFeet,
  standardPressure,
  waterBoilingPoint,
} from 'vitrose';

describe(`standardPressure against ${table.id}, ${table.source.locator}`, () => {
  it.each(table.rows)('gives $pressurePa Pa at $elevationM m, to the printed digit', (row) => {
    const { pressurePa, warnings } = standardPressure(row.elevationM);
    expect(Math.abs(pressurePa - row.pressurePa)).toBeLessThanOrEqual(1);
    expect(warnings).toEqual([]);
  });

  it.each(table.rows)('lets water boil there at $waterBoilingPointC °C', (row) => {
    const { boilingPointC } = waterBoilingPoint(standardPressure(row.elevationM).pressurePa);
    expect(Math.abs(boilingPointC - row.waterBoilingPointC)).toBeLessThanOrEqual(0.01);
  });
});

describe(`the chain of air and water against ${boilingAltitudeWaterTable.id}`, () => {
  it.each(boilingAltitudeWaterTable.rows)(
    'boils at $boilingPointF °F at $elevationFt ft',
    (row) => {
      const { pressurePa } = standardPressure(metresFromFeet(row.elevationFt));
      const printedC = celsiusFromFahrenheit(row.boilingPointF);
      // 0.2 °C, and half of the last printed digit of a °F.
      const withinC = 0.2 + 0.05 / 1.8;
      expect(Math.abs(waterBoilingPoint(pressurePa).boilingPointC - printedC)).toBeLessThanOrEqual(
        withinC,
      );
    },
  );
});

it('agrees with psychrolib, which rounds its constants, at every height it does not warn of', () => {
  psychrolib.SetUnitSystem(psychrolib.SI);
  for (let elevationM = -500; elevationM <= 10_000; elevationM += 250) {
    const other = psychrolib.GetStandardAtmPressure(elevationM);
    const { pressurePa, warnings } = standardPressure(elevationM);
    expect(Math.abs(pressurePa / other - 1), `at ${elevationM} m`).toBeLessThanOrEqual(5e-5);
    expect(warnings).toEqual([]);
  }
});
