export { DAILY_LIMITS_MG_PER_KG } from './daily-limits.js';
export {
  ENERGY_CONSTANTS,
  type EnergyFactors,
  EU_KCAL_PER_G,
  EU_KJ_PER_G,
  KJ_PER_KCAL,
  US_KCAL_PER_G,
} from './energy-factors.js';
export {
  type GlycaemicIndex,
  type GlycaemicLoad,
  glycaemicIndex,
  glycaemicLoad,
} from './glycaemic-index.js';
export {
  GLYCAEMIC_CONSTANTS,
  GLYCAEMIC_INDEX,
  SYRUP_GLYCAEMIC_HIGH,
  SYRUP_GLYCAEMIC_INDEX,
  SYRUP_GLYCAEMIC_LOW,
} from './glycaemic-parameters.js';
export { type Nature, SALT_PER_SODIUM, SODIUM_MASS_FRACTION } from './nature.js';
export {
  type Nutrition,
  type NutritionOptions,
  nutrition,
  PORTION_DOMAIN_G,
} from './nutrition.js';
export {
  BODY_MASS_DOMAIN_KG,
  POLYOL_GUIDE,
  POLYOL_SHARE_CONSTANTS,
  type PolyolShare,
  polyolShare,
} from './polyol-share.js';
export { type LabelFigure, roundForLabel } from './round-for-label.js';
export { EU_RULES } from './rules-eu.js';
export { US_REFERENCE_AMOUNTS_G, US_RULES } from './rules-us.js';
export type {
  AnalysisReason,
  ClaimCondition,
  ClaimId,
  ClaimPortion,
  ClaimQuantity,
  ClaimRule,
  DoseRule,
  DoseTest,
  LabelAmounts,
  LabelNutrient,
  LabelRule,
  LabelStatement,
  LabelTest,
  NutritionRules,
  Passes,
  RoundingRule,
  RoundingStep,
  StatementId,
  StatementRule,
} from './types.js';
export {
  DOG_MASS_DOMAIN_KG,
  XYLITOL_DOG_MG_PER_KG,
  type XylitolForDog,
  xylitolForDog,
} from './xylitol-for-dog.js';
