/** Syrups made up, swapped, inverted and named. Plain numbers in grams and shares. */
export { blendProfiles, type ProfiledSolids } from './blend-profiles.js';
export {
  blendThreeSyrups,
  type NoThreeSyrupBlend,
  THREE_SYRUPS_DOMAIN_DRY_SOLIDS,
  type ThreeSyrupBlend,
} from './blend-three-syrups.js';
export {
  blendTwoSyrups,
  type NoTwoSyrupBlend,
  type TwoSyrupBlend,
} from './blend-two-syrups.js';
export { SYRUP_DEFINITIONS, type SyrupDefinition } from './definitions.js';
export {
  DEXTROSE_CRYSTAL_CONSTANTS,
  DEXTROSE_CRYSTAL_DOMAIN_DRY_SOLIDS,
  DEXTROSE_CRYSTAL_TESTED_DRY_SOLIDS,
  type DextroseCrystals,
  dextroseCrystallises,
} from './dextrose-crystallises.js';
export {
  INVERT_CONSTANTS,
  INVERTED_DOMAIN_FRACTION,
  type InvertSyrup,
  invertSyrup,
} from './invert-syrup.js';
export { mixSyrups, SYRUP_MIX_DOMAIN_G, type WeighedSyrup } from './mix-syrups.js';
export {
  SYRUP_DOMAIN_DEXTROSE_EQUIVALENT,
  SYRUP_DOMAIN_DRY_SOLIDS,
  SYRUP_MASS_DOMAIN_G,
} from './require-syrup.js';
export {
  type NoSwap,
  type SwappedForDried,
  type SwappedForSyrup,
  swapDriedForSyrup,
  swapSyrupForDried,
  type WaterAfter,
} from './swap-syrup.js';
export { type SyrupFigures, syrupDefinitions } from './syrup-definitions.js';
export {
  type NoSyrupFromDried,
  type SyrupFromDried,
  syrupFromDried,
} from './syrup-from-dried.js';
export type { DryStrength, SyrupStrength, SyrupTarget } from './types.js';
