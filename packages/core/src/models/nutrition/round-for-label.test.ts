import { describe, expect, it } from 'vitest';
import { roundForLabel } from './round-for-label.js';
import { US_RULES } from './rules-us.js';
import type { LabelNutrient } from './types.js';

const printed = (value: number, nutrient: LabelNutrient, rules: 'us' | 'eu') => {
  const { kind, value: rounded } = roundForLabel(value, nutrient, rules);
  return kind === 'less-than' ? `<${rounded}` : rounded;
};

describe('rounding in the US', () => {
  it.each([
    [0, 0],
    [4.9, 0],
    [5, 5],
    [7.4, 5],
    [7.5, 10],
    [47.4, 45],
    [47.5, 50],
    [50, 50],
    [50.1, 50],
    [54.9, 50],
    [55, 60],
    [58.8, 60],
  ])('%f kcal is %f', (value, rounded) => {
    expect(printed(value, 'energyKcal', 'us')).toBe(rounded);
  });

  it.each(['carbohydrateG', 'sugarsG', 'addedSugarsG', 'polyolsG', 'fibreG', 'proteinG'] as const)(
    '%s: nought below a half, less than 1 below one, then whole grams',
    (nutrient) => {
      const of = (value: number) => printed(value, nutrient, 'us');
      expect([0, 0.49, 0.5, 0.99, 1, 1.49, 1.5, 14.7].map(of)).toEqual([
        0,
        0,
        '<1',
        '<1',
        1,
        1,
        2,
        15,
      ]);
    },
  );

  it('fat: half grams below five', () => {
    const of = (value: number) => printed(value, 'fatG', 'us');
    expect([0.49, 0.5, 0.74, 0.75, 4.9, 5, 5.5].map(of)).toEqual([0, 0.5, 0.5, 1, 5, 5, 6]);
  });
});

describe('rounding in the EU', () => {
  it('energy to one', () => {
    expect(printed(0.4, 'energyKcal', 'eu')).toBe(0);
    expect(printed(391.5, 'energyKcal', 'eu')).toBe(392);
    expect(printed(1665.49, 'energyKJ', 'eu')).toBe(1665);
  });

  it.each(['carbohydrateG', 'sugarsG', 'polyolsG', 'fibreG', 'proteinG', 'fatG'] as const)(
    '%s: under 0.5 up to a half, tenths below ten, then whole grams',
    (nutrient) => {
      const of = (value: number) => printed(value, nutrient, 'eu');
      expect([0, 0.01, 0.5, 0.51, 0.55, 0.65, 9.94, 9.99, 10, 10.5, 97.4].map(of)).toEqual([
        0,
        '<0.5',
        '<0.5',
        0.5,
        0.6,
        0.7,
        9.9,
        10,
        10,
        11,
        97,
      ]);
    },
  );

  it('salt: hundredths below one gram, then tenths', () => {
    const of = (value: number) => printed(value, 'saltG', 'eu');
    expect([0, 0.0125, 0.0126, 0.015, 0.994, 0.999, 1, 1.05].map(of)).toEqual([
      0,
      '<0.01',
      0.01,
      0.02,
      0.99,
      1,
      1,
      1.1,
    ]);
  });
});

describe('rounding', () => {
  it('is not thrown off by the last binary digit', () => {
    expect(printed(0.1 + 0.2 + 0.2, 'sugarsG', 'us')).toBe('<1');
    expect(printed(0.49999999999999994, 'sugarsG', 'us')).toBe('<1');
    expect(printed(1.005 * 100 - 100 + 0.15, 'sugarsG', 'eu')).toBe(0.7);
  });

  it('follows rules of your own', () => {
    const energyKcal = {
      ...US_RULES.rounding.energyKcal,
      steps: [{ to: 1e9, inclusive: true, as: 'nearest', step: 2 }],
    } as const;
    const rules = { ...US_RULES, rounding: { energyKcal } };
    expect(roundForLabel(58.8, 'energyKcal', rules)).toEqual({ kind: 'value', value: 58 });
  });

  it('is refused for what the rules do not round, and for what is no amount', () => {
    for (const [nutrient, rules] of [
      ['energyKJ', 'us'],
      ['saltG', 'us'],
      ['addedSugarsG', 'eu'],
    ] as const) {
      expect(() => roundForLabel(3, nutrient, rules)).toThrow(
        expect.objectContaining({
          code: 'unknown-name',
          parameter: 'nutrient',
          received: nutrient,
        }),
      );
    }
    for (const value of [-0.1, Number.NaN, Number.POSITIVE_INFINITY]) {
      expect(() => roundForLabel(value, 'sugarsG', 'us')).toThrow(
        expect.objectContaining({ name: 'ModelRangeError', parameter: 'value', received: value }),
      );
    }
  });
});
