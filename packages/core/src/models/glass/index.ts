export {
  GLASS_BAND_CONSTANTS,
  GLASS_CONSTANTS,
  GLASS_TESTED_DEXTROSE_EQUIVALENT,
  GLASS_TESTED_WATER_MASS_FRACTION,
} from './constants.js';
export { DRY_GLASS, type DryGlass } from './dry-parameters.js';
export { dryGlassTransition, type GlassTransition, glassTransition } from './glass-transition.js';
