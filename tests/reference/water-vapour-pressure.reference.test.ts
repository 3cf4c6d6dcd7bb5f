import { boilingPsatCheckTable as table } from '@vitrose/evidence';
import psychrolib from 'psychrolib';
import { describe, expect, it } from 'vitest';
import { waterBoilingPoint, waterLatentHeat, waterVapourPressure } from 'vitrose';

describe(`water against ${table.id}, ${table.source.locator}`, () => {
  it.each(table.rows)('boils at $temperatureC °C under $vapourPressureKPa kPa', (row) => {
    const { vapourPressurePa, warnings } = waterVapourPressure(row.temperatureC);
    expect(Math.abs(vapourPressurePa / (1_000 * row.vapourPressureKPa) - 1)).toBeLessThan(2e-4);
    expect(warnings).toEqual([]);
  });

  it.each(table.rows)('takes $latentHeatKJPerKg kJ/kg at $temperatureC °C', (row) => {
    const { latentHeatKJPerKg } = waterLatentHeat(row.temperatureC);
    expect(Math.abs(latentHeatKJPerKg - row.latentHeatKJPerKg)).toBeLessThanOrEqual(0.5);
  });
});

describe('water against the equations of the refrigeration handbook, as psychrolib has them', () => {
  it('has the same vapour pressure within 0.03 % from 0.01 to 150 °C', () => {
    psychrolib.SetUnitSystem(psychrolib.SI);
    for (const temperatureC of [0.01, ...Array.from({ length: 150 }, (_, index) => index + 1)]) {
      const other = psychrolib.GetSatVapPres(temperatureC);
      const ours = waterVapourPressure(temperatureC).vapourPressurePa;
      expect(Math.abs(ours / other - 1), `at ${temperatureC} °C`).toBeLessThanOrEqual(3e-4);
    }
  });
});

it('boils under the standard atmosphere at 99.974 °C', () => {
  expect(Math.abs(waterBoilingPoint(101_325).boilingPointC - 99.974)).toBeLessThanOrEqual(5e-4);
});
