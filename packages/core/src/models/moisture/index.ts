/**
 * Moisture: the humidity a sweet lives with, the dampest air it bears, what it takes up bare, and how
 * long a wrap keeps it. Isotherms of amorphous sugar while it is dry, the boiling model once it is syrup.
 */
export {
  RELATIVE_HUMIDITY_DOMAIN,
  SORPTION_BAND,
  SORPTION_CONSTANTS,
  SORPTION_DOMAIN_C,
  SORPTION_TESTED_C,
  STICKY_CONSTANTS,
} from './constants.js';
export { type CriticalHumidity, criticalHumidity, type Dampness } from './critical-humidity.js';
export { DIFFUSION_CONSTANTS } from './diffusion.js';
export {
  type EquilibriumHumidity,
  equilibriumRelativeHumidity,
} from './equilibrium-relative-humidity.js';
export { WRAP_FILM_IDS, WRAP_FILMS, type WrapFilm, type WrapFilmId } from './films.js';
export {
  ISOTHERMS,
  type Isotherm,
  type IsothermId,
  MEASURED_ISOTHERMS,
  STAND_IN_ISOTHERMS,
} from './isotherms.js';
export {
  AREA_DOMAIN_CM2,
  type BarePiece,
  type MoisturePickUp,
  moisturePickUp,
  PICK_UP_CONSTANTS,
  PICK_UP_DOMAIN,
  PICK_UP_DOMAIN_HOURS,
  PIECE_DOMAIN_G,
} from './moisture-pick-up.js';
export {
  type Pack,
  type PackContents,
  type PackFilm,
  SEAL_DOMAIN,
  WRAP_CONSTANTS,
  WVTR_DOMAIN_G_PER_M2_DAY,
} from './pack.js';
export type { NoSorption } from './sorption.js';
export { type EquilibriumWater, waterAtRelativeHumidity } from './water-at-relative-humidity.js';
export { type NoWrapLife, type WrapLife, type WrapStore, wrapLife } from './wrap-life.js';
