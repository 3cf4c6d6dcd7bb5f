import { describe, expect, it } from 'vitest';
import { isNone } from '../../foundation/results/is-none.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { measureForms } from './forms.js';
import { type KitchenMeasure, measureToGrams } from './measure-to-grams.js';
import type { MeasureUnit } from './types.js';
import { GRAMS_PER_UNIT, MEASURE_UNITS, MILLILITRES_PER_UNIT } from './units.js';

function grams(measure: KitchenMeasure) {
  const result = measureToGrams(measure);
  if (isNone(result)) throw new Error(result.reason);
  return result;
}

describe('measureToGrams', () => {
  it('takes an ounce for a weight, whatever is weighed', () => {
    const ounce = grams({ ingredient: 'stardust', unit: 'oz', quantity: 2 });
    expect(ounce.massG).toBe(56.69904625);
    expect(ounce.band).toEqual([56.69904625, 56.69904625]);
    expect(ounce.form).toBeNull();
    expect(ounce.warnings).toEqual([]);
  });

  it('gives a cup of granulated sugar as 200 g, between 190 and 220', () => {
    const cup = grams({ ingredient: 'sucrose', unit: 'us-cup', quantity: 1 });
    expect(cup.massG).toBeCloseTo(200, 0);
    expect(cup.band[0]).toBeCloseTo(190, 0);
    expect(cup.band[1]).toBeCloseTo(220, 0);
    expect(cup.form).toBe('granulated');
    expect(cup.warnings).toEqual([]);
  });

  it('packs brown sugar where the form says so', () => {
    const cup = grams({
      ingredient: 'sucrose',
      unit: 'us-cup',
      quantity: 1,
      form: 'brown-packed',
    });
    expect(cup.massG).toBeCloseTo(220, 0);
  });

  it('widens a drop by how large drops are', () => {
    const drop = grams({ ingredient: 'flavour-oil', unit: 'drop', quantity: 10 });
    expect(drop.massG).toBeCloseTo(0.45, 12);
    expect(drop.band[0]).toBeCloseTo(0.252, 12);
    expect(drop.band[1]).toBeCloseTo(0.63, 12);
  });

  it('says which weights are recalled', () => {
    const { warnings } = grams({ ingredient: 'golden-syrup', unit: 'ml', quantity: 1 });
    expect(warnings).toEqual([
      {
        code: 'shown-from-memory',
        parameter: 'gramsPerMl',
        value: 1.43,
        limits: [1.4, 1.45],
        subject: 'golden-syrup',
      },
    ]);
  });

  it('has no answer for what nobody has weighed', () => {
    for (const ingredient of ['sucralose', 'my-syrup', 'constructor']) {
      expect(measureToGrams({ ingredient, unit: 'us-teaspoon', quantity: 1 })).toEqual({
        kind: 'none',
        reason: 'no-weight-for-this',
      });
    }
    for (const form of ['cubes', 'toString']) {
      expect(measureToGrams({ ingredient: 'sucrose', unit: 'ml', quantity: 1, form })).toEqual({
        kind: 'none',
        reason: 'no-weight-for-this-form',
      });
    }
  });

  it('refuses a unit or a quantity that cannot be meant', () => {
    const water = { ingredient: 'water', unit: 'ml', quantity: 1 } as const;
    for (const unit of ['dram', 'toString']) {
      expect(() => measureToGrams({ ...water, unit: unit as MeasureUnit })).toThrow(
        expect.objectContaining({
          code: 'unknown-name',
          parameter: 'unit',
          received: unit,
          message: `Unit is none the library knows; received ${unit}.`,
        }),
      );
    }
    for (const quantity of [-1, 1_000_001, Infinity]) {
      expect(() => measureToGrams({ ...water, quantity })).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'quantity',
          received: quantity,
          limits: [0, 1_000_000],
        }),
      );
    }
    expect(() => measureToGrams({ ...water, quantity: Number.NaN })).toThrow(ModelRangeError);
  });

  it('measures out nothing, and a tonne', () => {
    expect(grams({ ingredient: 'sucrose', unit: 'us-cup', quantity: 0 }).massG).toBe(0);
    expect(grams({ ingredient: 'sucrose', unit: 'kg', quantity: 1_000_000 }).massG).toBe(1e9);
  });
});

describe('the units', () => {
  it('each stand for a mass or a volume, never both', () => {
    const known = [...Object.keys(GRAMS_PER_UNIT), ...Object.keys(MILLILITRES_PER_UNIT)];
    expect(known.sort()).toEqual([...MEASURE_UNITS].sort());
  });
});

describe('measureForms', () => {
  it('lists the usual form first, and none where there is no weight', () => {
    expect(measureForms('sucrose')[0]).toBe('granulated');
    expect(measureForms('water')).toEqual(['level']);
    expect(measureForms('sucralose')).toEqual([]);
    expect(measureForms('hasOwnProperty')).toEqual([]);
  });
});
