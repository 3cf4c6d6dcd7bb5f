export { measureForms } from './forms.js';
export { GRAMS_PER_ML, type WeightByForm } from './grams-per-ml.js';
export {
  type KitchenMeasure,
  type MeasuredGrams,
  measureToGrams,
  QUANTITY_DOMAIN,
} from './measure-to-grams.js';
export type { MeasureUnit } from './types.js';
export { DROP_ML, GRAMS_PER_UNIT, MEASURE_UNITS, MILLILITRES_PER_UNIT } from './units.js';
