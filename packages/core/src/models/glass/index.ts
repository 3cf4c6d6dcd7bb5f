export {
  GLASS_BAND_CONSTANTS,
  GLASS_CONSTANTS,
  GLASS_TESTED_DEXTROSE_EQUIVALENT,
  GLASS_TESTED_WATER_MASS_FRACTION,
} from './constants.js';
export { DRY_GLASS, type DryGlass } from './dry-parameters.js';
export { type GlassMargin, glassMargin, STORE_DOMAIN_C } from './glass-margin.js';
export { dryGlassTransition, type GlassTransition, glassTransition } from './glass-transition.js';
export { type Viscosity, viscosity } from './viscosity.js';
export {
  SYRUP_VISCOSITY_CONSTANTS,
  VISCOSITY_CONSTANTS,
  VISCOSITY_DOMAIN_C,
  VISCOSITY_JOIN_CONSTANTS,
  VISCOSITY_TESTED_C,
  VISCOSITY_TESTED_DISSOLVED,
} from './viscosity-constants.js';
export {
  WATER_AT_GLASS_DOMAIN_C,
  type WaterAtGlass,
  waterAtGlassTransition,
} from './water-at-glass-transition.js';
export {
  WORKING_VISCOSITIES,
  type WorkingStepId,
  type WorkingTemperature,
  type WorkingTemperatures,
  WRAP_BELOW_GLASS,
  workingTemperatures,
} from './working-temperatures.js';
