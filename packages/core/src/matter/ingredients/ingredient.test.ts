import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { INGREDIENT_IDS } from './ids.js';
import { ingredient } from './ingredient.js';
import type { IngredientId } from './types.js';

describe('ingredient', () => {
  it('names each ingredient once', () => {
    expect(INGREDIENT_IDS).toHaveLength(63);
    expect(new Set(INGREDIENT_IDS).size).toBe(63);
  });

  it.each(INGREDIENT_IDS)('accounts for every gram of dry %s', (id) => {
    const { drySolidsMassFraction, solids, apart, dextroseEquivalent } = ingredient(id);
    const { value, low = value, high = value } = drySolidsMassFraction;
    expect(value).toBeGreaterThanOrEqual(low);
    expect(value).toBeLessThanOrEqual(high);
    const shares = [...Object.values(solids ?? {}), ...Object.values(apart ?? {})];
    const total = shares.reduce((sum, share) => sum + share, 0);
    const whole = id === 'water' || dextroseEquivalent !== undefined ? 0 : 1;
    expect(total).toBeCloseTo(whole, 9);
  });

  it('counts crystal water as water', () => {
    expect(ingredient('dextrose-monohydrate').drySolidsMassFraction.value).toBe(0.9091);
  });

  it('keeps the alcohol of an extract apart and its water as water', () => {
    const extract = ingredient('flavour-alcohol');
    expect(extract.drySolidsMassFraction.value).toBe(0.6);
    expect(0.6 * (extract.apart?.ethanol ?? 0)).toBeCloseTo(0.55, 12);
    expect(0.6 * (extract.apart?.oil ?? 0)).toBeCloseTo(0.05, 12);
  });

  it('refuses a name it does not know, inherited ones too', () => {
    for (const name of ['unicorn-dust', 'toString', '__proto__']) {
      expect(() => ingredient(name as IngredientId)).toThrow(ModelRangeError);
      expect(() => ingredient(name as IngredientId)).toThrow(
        expect.objectContaining({
          code: 'unknown-name',
          parameter: 'ingredient',
          received: name,
          message: `Ingredient is none the library knows; received ${name}.`,
        }),
      );
    }
  });
});
