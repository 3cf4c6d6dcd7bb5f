import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import { settle } from './claims.js';
import { type NutritionOptions, rulesOf } from './nutrition.js';
import type { LabelNutrient } from './types.js';

const LABEL_VALUE_DOMAIN: Span = [0, 1e9];

/** A figure as a label writes it: a number, or less than one. */
export type LabelFigure = { readonly kind: 'value' | 'less-than'; readonly value: number };

/**
 * A figure rounded the way a label rounds it.
 *
 * Round the figure of the portion that is printed, last of all: rounding 100 g first and scaling it
 * down is another number. Half a step goes up.
 *
 * @param value - g, kcal or kJ of the portion; from 0.
 * @param nutrient - Name of the field of `per100G` it came from.
 * @param rules - `us`, `eu` or your own.
 * @returns `value`, and whether the label prints it or says that there is less than it.
 * @throws {@link ModelRangeError} if the value is negative or no number, or the rules round no such
 *   nutrient: kilojoules and salt in the US, added sugars in the EU.
 * @example
 * roundForLabel(58.8, 'energyKcal', 'us').value // 60 kcal
 * @source us-21-cfr-101-9, eu-guidance-2012
 */
export function roundForLabel(
  value: number,
  nutrient: LabelNutrient,
  rules: NutritionOptions['rules'],
): LabelFigure {
  requireWithin('value', value, LABEL_VALUE_DOMAIN);
  const rule = rulesOf(rules).rounding[nutrient];
  const settled = settle(value);
  const step = rule?.steps.find(
    ({ to, inclusive }) => settled < to || (inclusive && settled === to),
  );
  if (step === undefined) {
    throw unknownName('nutrient', nutrient, 'There is no rounding for this under these rules');
  }
  if (step.as === 'zero' || settled === 0) return { kind: 'value', value: 0 };
  if (step.as === 'less-than') return { kind: 'less-than', value: step.step };
  return { kind: 'value', value: toNearest(settled, step.step) };
}

/** Divides by the number of steps in one where they are smaller, so that 0.6 is 0.6. */
function toNearest(value: number, step: number): number {
  const count = Math.round(settle(value / step));
  return step < 1 ? count / Math.round(1 / step) : count * step;
}
