import {
  densityCandyMassTable as candyTable,
  densityIcumsaCoefficientsTable as coefficientsTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import { type CandyKind, candyMassDensity, SUCROSE_DENSITY_COEFFICIENTS } from 'vitrose';

describe(`densityFromBrix against ${coefficientsTable.id}: ${coefficientsTable.source.title}`, () => {
  it('has a row for each power of the temperature and no more', () => {
    expect(SUCROSE_DENSITY_COEFFICIENTS).toHaveLength(coefficientsTable.rows.length);
  });

  it.each(coefficientsTable.rows)('has the coefficients of power $powerOfTau', (row) => {
    const { w1, w2, w3, w4, w5, w6 } = row;
    const printed = [w1, w2, w3, w4, w5, w6].filter((coefficient) => coefficient !== null);
    expect(SUCROSE_DENSITY_COEFFICIENTS[row.powerOfTau]).toEqual(printed);
  });
});

describe(`candyMassDensity against ${candyTable.id}: ${candyTable.source.title}`, () => {
  const cooled: readonly (readonly [start: string, kind: CandyKind])[] = [
    ['cooled clear sugar glass', 'clear'],
    ['isomalt glass', 'isomalt'],
    ['pulled sugar', 'pulled'],
    ['fondant', 'fondant'],
  ];
  const printed = (start: string) => {
    const row = candyTable.rows.find(({ mass }) => mass.startsWith(start));
    if (row === undefined) throw new Error(`no row for ${start}`);
    return { densityGPerMl: row.densityGPerMl, band: [row.lowGPerMl, row.highGPerMl] };
  };

  it('pours hot mass as the table does', () => {
    expect(candyMassDensity({ state: 'hot' })).toEqual(printed('hot clear mass'));
  });

  it.each(cooled)('takes %s as the table does', (start, kind) => {
    expect(candyMassDensity({ state: 'cooled', kind })).toEqual(printed(start));
  });
});
