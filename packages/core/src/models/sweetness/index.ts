export { boosterForSweetness } from './booster.js';
export { boosterPairForSweetness } from './booster-pair.js';
export {
  ADDED_AT_DOMAIN_C,
  type Booster,
  type BoosterOptions,
  type BoosterPair,
  type BoosterSweetener,
  type NoBooster,
  TARGET_SWEETNESS_DOMAIN,
} from './booster-types.js';
export {
  EU_SWEETENER_CAPS,
  GLUCOSE_STRENGTH_CONSTANTS,
  INTENSE_RESPONSE,
  type IntenseResponse,
  type IntenseSweetener,
  SUCROSE_EQUIVALENCE_DOMAIN,
  SUCROSE_EQUIVALENCE_TESTED,
  SYNERGY_MOST,
  TASTING_CONCENTRATION_DOMAIN,
  TASTING_CONCENTRATION_TESTED,
  TASTING_CONSTANTS,
} from './intense-parameters.js';
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
export { type RelativeSweetness, relativeSweetness } from './relative-sweetness.js';
export type { Synergy, TastingOptions } from './tasting.js';
