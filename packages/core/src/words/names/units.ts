import type { MeasureUnit } from '../../matter/measures/types.js';
import type { Catalogue } from '../types.js';

/** Units a recipe may use, for one and for many. */
export const MEASURE_UNIT_NAMES = {
  kg: ['kg', 'kg'],
  oz: ['ounce (weight)', 'ounces (weight)'],
  lb: ['pound', 'pounds'],
  ml: ['ml', 'ml'],
  'us-cup': ['US cup', 'US cups'],
  'metric-cup': ['metric cup', 'metric cups'],
  'us-tablespoon': ['US tablespoon', 'US tablespoons'],
  'metric-tablespoon': ['metric tablespoon', 'metric tablespoons'],
  'au-tablespoon': ['Australian tablespoon', 'Australian tablespoons'],
  'us-teaspoon': ['US teaspoon', 'US teaspoons'],
  'metric-teaspoon': ['metric teaspoon', 'metric teaspoons'],
  'us-fluid-ounce': ['US fluid ounce', 'US fluid ounces'],
  'us-fluid-dram': ['US fluid dram', 'US fluid drams'],
  drop: ['drop', 'drops'],
} as const satisfies Catalogue['measureUnits'];

/**
 * The name of a kitchen measure.
 *
 * @param unit - A unit of the batch document.
 * @param quantity - How many; one is singular.
 * @example
 * unitName('us-cup', 2) // 'US cups'
 */
export function unitName(unit: MeasureUnit, quantity = 1): string {
  return MEASURE_UNIT_NAMES[unit][Math.abs(quantity) <= 1 ? 0 : 1];
}
