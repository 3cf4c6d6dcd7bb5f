import { kitchenMeasuresTable as table } from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import { isNone, MEASURE_UNITS, type MeasureUnit, measureForms, measureToGrams } from 'vitrose';

const formOf = (row: object): string | undefined =>
  'form' in row && typeof row.form === 'string' ? row.form.replace(/[ ,]+/g, '-') : undefined;

function grams(ingredient: string, unit: MeasureUnit, quantity: number, form?: string) {
  const result = measureToGrams({ ingredient, unit, quantity, form });
  if (isNone(result)) throw new Error(`${ingredient}: ${result.reason}`);
  return result;
}

describe(`measureToGrams against ${table.id}: ${table.source.title}`, () => {
  it('knows the units of the table and no others', () => {
    expect(table.extra.units.map((one) => one.unit).sort()).toEqual([...MEASURE_UNITS].sort());
  });

  it.each(table.extra.units)('holds $unit to its definition', (row) => {
    const one = grams('water', row.unit, 1);
    if ('g' in row) {
      expect(Math.abs(one.massG / row.g - 1)).toBeLessThanOrEqual(1e-9);
      return;
    }
    const oneMl = grams('water', 'ml', 1);
    expect(Math.abs(one.massG / oneMl.massG / row.ml - 1)).toBeLessThanOrEqual(1e-9);
  });

  it.each(table.rows)('weighs $ingredient as printed', (row) => {
    const form = formOf(row);
    const oneMl = grams(row.ingredient, 'ml', 1, form);
    expect(oneMl.massG).toBeCloseTo(row.gPerMl, 12);
    expect(oneMl.band[0]).toBeCloseTo(row.gPerMlLow, 12);
    expect(oneMl.band[1]).toBeCloseTo(row.gPerMlHigh, 12);
    expect(oneMl.warnings.length > 0).toBe(row.grade === 'memory');
  });

  it.each(table.rows)('fills a cup of $ingredient to $gPerUsCup g', (row) => {
    // Grams per mL are printed to a thousandth, which is 0.12 g a cup; the cup to a tenth.
    const cup = grams(row.ingredient, 'us-cup', 1, formOf(row));
    expect(Math.abs(cup.massG - row.gPerUsCup)).toBeLessThanOrEqual(0.18);
  });

  it('takes the first form of the table where none is named', () => {
    for (const { ingredient } of table.rows) {
      const first = table.rows.find((row) => row.ingredient === ingredient);
      const usual = (first && formOf(first)) ?? 'level';
      expect(measureForms(ingredient)[0]).toBe(usual);
      expect(grams(ingredient, 'ml', 1).form).toBe(usual);
    }
  });
});
