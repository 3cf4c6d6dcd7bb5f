import {
  boilingCandyRegimeTable,
  boilingSucroseAw25CTable,
  boilingSucroseGerlachTable,
  boilingSucroseStarzakPeacockTable,
  stagesBoilingCrosscheckTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import { boilingPoint, solutionOf, waterActivity } from 'vitrose';

const boil = (drySolidsPercent: number, pressurePa = 101_325) =>
  boilingPoint(solutionOf('sucrose', { drySolidsMassFraction: drySolidsPercent / 100 }), {
    pressurePa,
  });

const rootMeanSquare = (errors: readonly number[]): number =>
  Math.sqrt(errors.reduce((sum, error) => sum + error ** 2, 0) / errors.length);

describe(`sucrose at 25 °C against ${boilingSucroseAw25CTable.id}`, () => {
  it.each(boilingSucroseAw25CTable.rows)(
    'has an activity of $waterActivity at $molalityMolPerKg mol/kg',
    (row) => {
      const syrup = solutionOf('sucrose', { drySolidsMassFraction: row.drySolidsPercent / 100 });
      const found = waterActivity(syrup, { temperatureC: 25 });
      expect(Math.abs(found.waterActivity - row.waterActivity)).toBeLessThanOrEqual(0.0013);
      expect(found.warnings).toEqual([]);
    },
  );
});

describe(`sucrose against ${boilingSucroseStarzakPeacockTable.id}`, () => {
  it.each(boilingSucroseStarzakPeacockTable.rows)('boils alike at $drySolidsPercent %', (row) => {
    const at101 = boil(row.drySolidsPercent).boilingPointC - row.boilingPointAt101KPaC;
    const at60 = boil(row.drySolidsPercent, 60_000).boilingPointC - row.boilingPointAt60KPaC;
    expect(Math.abs(at101)).toBeLessThanOrEqual(0.8);
    expect(Math.abs(at60)).toBeLessThanOrEqual(3.2);
  });

  it('runs away from it only at 20 kPa past the 96 % its data reach to', () => {
    const far = boilingSucroseStarzakPeacockTable.rows.filter((row) => {
      const { band } = boil(row.drySolidsPercent, 20_000);
      return row.boilingPointAt20KPaC < band[0] || row.boilingPointAt20KPaC > band[1];
    });
    expect(far.map((row) => row.drySolidsPercent)).toEqual([99]);
  });
});

describe(`sucrose against ${boilingCandyRegimeTable.id}, recalled`, () => {
  it('errs by no more than 2.3 K as a rule and 6 K at worst', () => {
    const errors = boilingCandyRegimeTable.rows.map(
      (row) => boil(row.drySolidsPercent).boilingPointC - row.boilingPointC,
    );
    expect(rootMeanSquare(errors)).toBeLessThanOrEqual(2.3);
    expect(Math.max(...errors.map(Math.abs))).toBeLessThanOrEqual(6);
  });
});

describe('the printed band', () => {
  const rows = [
    boilingSucroseGerlachTable,
    boilingCandyRegimeTable,
    stagesBoilingCrosscheckTable,
  ].flatMap((table) => table.rows.map((row) => ({ table: table.id, ...row })));

  it('holds every printed row but the one that puts 95 % at 130 °C', () => {
    const outside = rows.filter((row) => {
      const { band } = boil(row.drySolidsPercent);
      return row.boilingPointC < band[0] || row.boilingPointC > band[1];
    });
    expect(outside.map((row) => [row.table, row.drySolidsPercent, row.boilingPointC])).toEqual([
      ['stages-boiling-crosscheck', 95, 130],
    ]);
  });
});
