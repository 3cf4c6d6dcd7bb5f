/**
 * Boiling: one water-activity model, asked four ways. A Margules equation for sucrose carries every
 * other solute by equal mass; it was taken because it stays monotone to dryness, where mole-based
 * rules run off and the published correlation turns back.
 */
export { BOILING_SPREAD, POLYOL_SPREAD } from './band.js';
export { type BoilingPoint, boilingPoint } from './boiling-point.js';
export {
  BOIL_TESTED_C,
  BOIL_TESTED_PA,
  BOILING_CONSTANTS,
  DISSOLVED_DOMAIN,
  DISSOLVED_TESTED,
  SUCROSE_DECOMPOSES_ABOVE_C,
} from './constants.js';
export { COOK_TARGET_SHARE, type CookTarget, cookTarget } from './cook-target.js';
export { type DrySolidsAtBoil, drySolidsAtBoil, type NoBoil } from './dry-solids-at-boil.js';
export {
  ASSUMED_MOLAR_MASSES,
  ASSUMED_POLYOLS,
  ASSUMED_SOLUTES,
  LONG_CHAINS,
  NORRISH_POLYOLS,
  NORRISH_SUGARS,
  REFERENCE_SOLUTE,
  type SoluteRow,
  type SoluteRows,
  UNKNOWN_SOLUTE,
} from './parameters.js';
export {
  WATER_ACTIVITY_DOMAIN_C,
  WATER_ACTIVITY_TESTED_C,
  waterActivity,
} from './water-activity.js';
