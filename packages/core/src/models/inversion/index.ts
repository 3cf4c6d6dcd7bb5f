export {
  DRY_END_CONSTANTS,
  INVERSION_CONSTANTS,
  INVERSION_DOMAIN_C,
  INVERSION_DOMAIN_PH,
  INVERSION_DOMAIN_S,
  INVERSION_DOMAIN_WATER_G_PER_ML,
  INVERSION_STEPS,
  INVERSION_TESTED_C,
  INVERSION_TESTED_DISSOLVED,
  STEPS_BEFORE_LATE_ACID,
} from './constants.js';
export { type Inversion, type InversionOptions, inversion } from './inversion.js';
export { inversionRate } from './inversion-rate.js';
export { invertedMixture } from './inverted-mixture.js';
export type { Heating, HeatPath, HeatPoint } from './path.js';
export type { AcidOptions } from './stretches.js';
