import {
  heatCoolingTable as coolingTable,
  heatCpTable as cpTable,
  practiceBoilCurveTable as curveTable,
  heatEfficiencyTable as efficiencyTable,
  heatWorkedExampleTable as exampleTable,
  heatLatentTable as latentTable,
  type Residual,
  residuals,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  boilDown,
  carryOver,
  coolingTime,
  evaporationHeat,
  hobPower,
  isNone,
  mixture,
  type None,
  specificHeat,
  sucroseCrystalSpecificHeat,
} from 'vitrose';

const charge = () =>
  mixture([
    { ingredient: 'sucrose', massG: 1_000 },
    { ingredient: 'water', massG: 330 },
  ]);

function answered<T extends object>(result: T | None): T {
  if (isNone(result)) throw new RangeError(result.reason);
  return result as T;
}

const rowsOf = (table: 'heat-worked-example' | 'practice-boil-curve', column: string) =>
  residuals(table).find((found) => found.column === column && found.model === 'boilDown')?.rows ??
  [];

describe(`specificHeat against ${cpTable.id}: ${cpTable.source.title}`, () => {
  it.each(cpTable.rows)('gives $specificHeatKJPerKgK at $brix Brix and $temperatureC °C', (row) => {
    const { specificHeatKJPerKgK, band } = specificHeat({
      brix: row.brix,
      temperatureC: row.temperatureC,
      purity: row.purityPercent,
    });
    expect(Math.abs(specificHeatKJPerKgK - row.specificHeatKJPerKgK)).toBeLessThanOrEqual(0.001);
    expect(band[0]).toBeLessThanOrEqual(row.specificHeatKJPerKgK);
    expect(band[1]).toBeGreaterThanOrEqual(row.specificHeatKJPerKgK);
  });

  it('gives the melt and the crystal as printed', () => {
    const { dryMelt, crystallineSucrose } = cpTable.constants;
    const melt = specificHeat({ brix: 99, temperatureC: 150 });
    expect(melt.specificHeatKJPerKgK).toBe(dryMelt.value);
    expect(melt.band[1] - dryMelt.value).toBeCloseTo(dryMelt.either, 9);
    const crystal = sucroseCrystalSpecificHeat(50).specificHeatKJPerKgK;
    expect(Math.abs(crystal - crystallineSucrose.at50C)).toBeLessThanOrEqual(0.001);
  });
});

describe(`evaporationHeat against ${latentTable.id}: ${latentTable.source.title}`, () => {
  const rows = latentTable.rows.filter((row) => row.temperatureC >= 100);

  it('has four rows hot enough', () => expect(rows).toHaveLength(4));

  it.each(rows)('lies within 2 % of saturated steam at $temperatureC °C', (row) => {
    const { evaporationHeatKJPerKg } = evaporationHeat({ temperatureC: row.temperatureC });
    expect(Math.abs(evaporationHeatKJPerKg / row.latentHeatKJPerKg - 1)).toBeLessThanOrEqual(0.02);
  });
});

describe(`hobPower against ${efficiencyTable.id}: ${efficiencyTable.source.title}`, () => {
  it.each([
    ['gas', 'gas'],
    ['electric resistance', 'resistance'],
    ['induction', 'induction'],
  ] as const)('gives %s the share printed, with its range', (printed, kind) => {
    const row = efficiencyTable.rows.find((one) => one.kind === printed);
    const { powerW, band } = hobPower({ kind, powerW: 1_000 });
    expect(powerW / 1_000).toBeCloseTo(row?.use ?? Number.NaN, 12);
    expect(band.map((watts) => watts / 1_000)).toEqual([row?.low, row?.high]);
  });
});

describe(`boilDown against ${exampleTable.id}: ${exampleTable.title}`, () => {
  const rows = rowsOf('heat-worked-example', 'value');

  it('answers every quantity, each against a limit', () => {
    expect(rows).toHaveLength(exampleTable.rows.length);
    for (const { insideLimit } of rows) expect(insideLimit).toBeDefined();
  });

  it.each(rows)('gives $printed for $label', ({ insideLimit }: Residual) => {
    expect(insideLimit).toBe(true);
  });
});

describe(`boilDown against ${curveTable.id}: ${curveTable.title}`, () => {
  it.each(rowsOf('practice-boil-curve', 'minutes'))(
    'needs $printed min from the first boil to $label',
    ({ insideLimit }: Residual) => {
      expect(insideLimit).toBe(true);
    },
  );

  it.each(rowsOf('practice-boil-curve', 'rateKPerMin'))(
    'rises by $printed K a minute at $label, to the printed digit',
    ({ difference }: Residual) => {
      expect(Math.abs(difference)).toBeLessThanOrEqual(0.05);
    },
  );

  it('starts at the rate of the first row', () => {
    const hob = { kind: 'resistance', powerW: 1_000 / 0.75 } as const;
    const { path } = answered(boilDown(charge(), { hob, targetC: 120 }));
    expect(Math.abs((path[1]?.rateKPerMin ?? 0) - curveTable.rows[0].rateKPerMin)).toBeLessThan(
      0.05,
    );
  });

  it('carries on by less than the note says, which spends all of the heat on steam', () => {
    const kilogramOfSteel = { temperatureC: 153.4, panMassG: 1_000 };
    const { carryOverK, band } = answered(carryOver(charge(), kilogramOfSteel));
    expect(carryOverK).toBeGreaterThan(2);
    expect(Math.abs(band[1] - 3)).toBeLessThan(0.1);
  });
});

describe(`coolingTime against ${coolingTable.id}: ${coolingTable.source.title}`, () => {
  const { example } = coolingTable.constants;

  it('cools the disc of the example in its minutes', () => {
    const { massG, areaCm2, airC, fromC, toC } = example;
    const found = answered(coolingTime({ massG, areaCm2, airC, fromC, toC }));
    expect(Math.abs(found.minutes - example.minutes)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(found.timeConstantS - example.timeConstantS)).toBeLessThanOrEqual(5);
  });

  it.each([
    ['still-air', 'still air, convection plus radiation'],
    ['fan', 'fan'],
    ['slab', 'metal or stone slab, one face'],
  ] as const)('passes on heat in %s as printed', (surface, printed) => {
    const row = coolingTable.rows.find((one) => one.surface === printed);
    const { massG, areaCm2, fromC, toC, specificHeatKJPerKgK } = example;
    const { timeConstantS } = answered(coolingTime({ massG, areaCm2, fromC, toC, surface }));
    const coefficient = (massG * specificHeatKJPerKgK) / (timeConstantS * areaCm2 * 1e-4);
    expect(coefficient).toBeCloseTo(row?.coefficientWPerM2K ?? Number.NaN, 9);
  });
});
