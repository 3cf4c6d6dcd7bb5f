export {
  FRUCTOSE_SWEETNESS_CONSTANTS,
  NOT_SWEET,
  SWEETNESS,
  type Sweetness,
  SYRUP_SWEETNESS_CONSTANTS,
  SYRUP_SWEETNESS_HIGH,
  SYRUP_SWEETNESS_LOW,
  TASTING_TEMPERATURE_DOMAIN_C,
  TASTING_TEMPERATURE_TESTED_C,
} from './parameters.js';
export {
  type RelativeSweetness,
  relativeSweetness,
  type TastingOptions,
} from './relative-sweetness.js';
