import type { MeasureUnit } from './types.js';

/** Every unit a recipe may use besides grams. */
export const MEASURE_UNITS = [
  'kg',
  'oz',
  'lb',
  'ml',
  'us-cup',
  'metric-cup',
  'us-tablespoon',
  'metric-tablespoon',
  'au-tablespoon',
  'us-teaspoon',
  'metric-teaspoon',
  'us-fluid-ounce',
  'us-fluid-dram',
  'drop',
] as const satisfies readonly MeasureUnit[];

/** Grams in each unit of mass, exact by definition. */
export const GRAMS_PER_UNIT = {
  kg: 1_000,
  oz: 28.349523125,
  lb: 453.59237,
} as const satisfies Partial<Record<MeasureUnit, number>>;

/** Millilitres in each unit of volume, exact by definition; the drop is nominal. */
export const MILLILITRES_PER_UNIT = {
  ml: 1,
  'us-cup': 236.5882365,
  'metric-cup': 250,
  'us-tablespoon': 14.78676478125,
  'metric-tablespoon': 15,
  'au-tablespoon': 20,
  'us-teaspoon': 4.92892159375,
  'metric-teaspoon': 5,
  'us-fluid-ounce': 29.5735295625,
  'us-fluid-dram': 3.6966911953125,
  drop: 0.05,
} as const satisfies Partial<Record<MeasureUnit, number>>;

/** What a drop holds, mL: thin oils 0.03, water 0.05, thick ones 0.06. */
export const DROP_ML = {
  value: 0.05,
  low: 0.03,
  high: 0.06,
  source: 'common-practice',
  grade: 'practice',
} as const;
