import { kitchenMeasuresTable } from '@vitrose/evidence';
import fc from 'fast-check';
import { expect, it } from 'vitest';
import {
  INGREDIENT_IDS,
  isNone,
  MEASURE_UNITS,
  ModelRangeError,
  measureForms,
  measureToGrams,
} from 'vitrose';

const measured = fc.constantFrom(...kitchenMeasuresTable.rows.map((row) => row.ingredient));
const unit = fc.constantFrom(...MEASURE_UNITS);
const quantity = fc.double({ min: 1e-3, max: 1e4, noNaN: true });

it('weighs twice as much for twice the spoons', () => {
  fc.assert(
    fc.property(measured, unit, quantity, (ingredient, spoon, n) => {
      const once = measureToGrams({ ingredient, unit: spoon, quantity: n });
      const twice = measureToGrams({ ingredient, unit: spoon, quantity: 2 * n });
      if (isNone(once) || isNone(twice)) throw new Error('has a weight');
      expect(twice.massG / once.massG).toBeCloseTo(2, 9);
      expect(twice.band[0] / once.band[0]).toBeCloseTo(2, 9);
    }),
  );
});

it('keeps the weight inside its band, and exact for units of weight', () => {
  fc.assert(
    fc.property(measured, unit, quantity, (ingredient, spoon, n) => {
      const result = measureToGrams({ ingredient, unit: spoon, quantity: n });
      if (isNone(result)) throw new Error('has a weight');
      const [low, high] = result.band;
      expect(low).toBeLessThanOrEqual(result.massG);
      expect(high).toBeGreaterThanOrEqual(result.massG);
      expect(low === high).toBe(['kg', 'oz', 'lb'].includes(spoon));
    }),
  );
});

it('answers for every ingredient: grams, or why there are none', () => {
  fc.assert(
    fc.property(fc.constantFrom(...INGREDIENT_IDS), unit, (ingredient, spoon) => {
      const result = measureToGrams({ ingredient, unit: spoon, quantity: 1 });
      const hasWeight = measureForms(ingredient).length > 0 || ['kg', 'oz', 'lb'].includes(spoon);
      expect(isNone(result)).toBe(!hasWeight);
    }),
  );
});

it('orders the spoons of every kitchen by size', () => {
  const bySize = [
    'drop',
    'ml',
    'us-fluid-dram',
    'us-teaspoon',
    'metric-teaspoon',
    'us-tablespoon',
    'metric-tablespoon',
    'au-tablespoon',
    'us-fluid-ounce',
    'us-cup',
    'metric-cup',
  ] as const;
  fc.assert(
    fc.property(measured, fc.nat(bySize.length - 2), (ingredient, at) => {
      const [smaller, larger] = [bySize[at], bySize[at + 1]].map((spoon) =>
        measureToGrams({ ingredient, unit: spoon ?? 'ml', quantity: 1 }),
      );
      if (smaller === undefined || larger === undefined || isNone(smaller) || isNone(larger)) {
        throw new Error('has a weight');
      }
      expect(larger.massG).toBeGreaterThan(smaller.massG);
    }),
  );
});

it('refuses a quantity that cannot be meant', () => {
  const wrong = fc.oneof(
    fc.double({ max: -1e-9, noNaN: true }),
    fc.constantFrom(Number.NaN, Infinity),
  );
  fc.assert(
    fc.property(unit, wrong, (spoon, n) => {
      expect(() => measureToGrams({ ingredient: 'water', unit: spoon, quantity: n })).toThrow(
        ModelRangeError,
      );
    }),
  );
});
