/** Units a recipe may use besides grams. A bare ounce is a weight; a bare dram is no unit at all. */
export type MeasureUnit =
  | 'kg'
  | 'oz'
  | 'lb'
  | 'ml'
  | 'us-cup'
  | 'metric-cup'
  | 'us-tablespoon'
  | 'metric-tablespoon'
  | 'au-tablespoon'
  | 'us-teaspoon'
  | 'metric-teaspoon'
  | 'us-fluid-ounce'
  | 'us-fluid-dram'
  | 'drop';
