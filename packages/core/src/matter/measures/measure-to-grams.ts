import type { Checked, ModelWarning, None, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedRange } from '../../foundation/validity/constants.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import { GRAMS_PER_ML, type WeightByForm } from './grams-per-ml.js';
import type { MeasureUnit } from './types.js';
import { DROP_ML, GRAMS_PER_UNIT, MILLILITRES_PER_UNIT } from './units.js';

/** An amount as a recipe writes it. */
export type KitchenMeasure = {
  /** Name of the ingredient; one without a weight of its own answers `none`. */
  readonly ingredient: string;
  readonly unit: MeasureUnit;
  readonly quantity: number;
  /** How it lies in the spoon, `granulated` or `brown-packed`; the usual form if left out. */
  readonly form?: string | undefined;
};

/** What a spoon or a cup holds. */
export type MeasuredGrams = {
  readonly massG: number;
  readonly band: Span;
  /** The form the weight belongs to; `null` where the unit is itself a weight. */
  readonly form: string | null;
};

/** More than any kitchen measures out at once. */
export const QUANTITY_DOMAIN: Span = [0, 1_000_000];

/**
 * Grams of a spoon, a cup, a dram or a pound of something.
 *
 * Units of weight are exact. A spoon is a volume: how much it holds depends on the grain and on
 * the hand, so the answer carries low and high, and a scale beats it. Powders nobody agrees on
 * have no row and no answer. Weigh acids, bicarbonate, sweeteners and strong oils in any case.
 *
 * @equation m = quantity · V(unit) · ρ(ingredient, form)
 * @param measure - Ingredient, unit, quantity (0 to 1 000 000) and, where it matters, the form.
 * @returns `massG` and `band`, g, with the form used; or none: `no-weight-for-this` where the
 *   table has no such ingredient, `no-weight-for-this-form` where it has no such form.
 * @throws {@link ModelRangeError} if the quantity cannot be meant or the unit is unknown.
 * @example
 * measureToGrams({ ingredient: 'sucrose', unit: 'metric-cup', quantity: 1 }).massG // 211.25 g
 * @source kitchen-weight-charts, recalled-household-weights, common-practice
 */
export function measureToGrams(
  measure: KitchenMeasure,
): Checked<MeasuredGrams> | None<'no-weight-for-this' | 'no-weight-for-this-form'> {
  const { ingredient, unit, quantity, form } = measure;
  requireWithin('quantity', quantity, QUANTITY_DOMAIN);
  const gramsEach = lookUp(GRAMS_PER_UNIT, unit);
  if (gramsEach !== undefined) {
    const massG = quantity * gramsEach;
    return { massG, band: [massG, massG], form: null, warnings: [] };
  }
  const millilitresEach = lookUp(MILLILITRES_PER_UNIT, unit);
  if (millilitresEach === undefined) {
    throw unknownName('unit', unit, 'Unit is none the library knows');
  }
  const forms: WeightByForm | undefined = lookUp(GRAMS_PER_ML, ingredient);
  if (forms === undefined) return { kind: 'none', reason: 'no-weight-for-this' };
  const named = form ?? usualForm(forms);
  const weight = lookUp(forms, named);
  if (weight === undefined) return { kind: 'none', reason: 'no-weight-for-this-form' };
  const { value, low = value, high = value } = weight;
  const [smallest, largest] =
    unit === 'drop' ? [DROP_ML.low, DROP_ML.high] : [millilitresEach, millilitresEach];
  return {
    massG: quantity * millilitresEach * value,
    band: [quantity * smallest * low, quantity * largest * high],
    form: named,
    warnings: recalled(weight, ingredient),
  };
}

/** A weight nobody has found in print again says so. */
function recalled(weight: CitedRange, ingredient: string): readonly ModelWarning[] {
  if (weight.grade !== 'memory') return [];
  const { value, low = value, high = value } = weight;
  return [
    {
      code: 'shown-from-memory',
      parameter: 'gramsPerMl',
      value,
      limits: [low, high],
      subject: ingredient,
    },
  ];
}

function usualForm(forms: WeightByForm): string {
  return Object.keys(forms)[0] ?? 'level';
}

/** Own keys only, so that no name reaches what objects inherit. */
function lookUp<Value>(table: Readonly<Record<string, Value>>, key: string): Value | undefined {
  return Object.hasOwn(table, key) ? table[key] : undefined;
}
