/** Starch syrups: chain lengths, dextrose equivalent and molar mass. */
export {
  CHAIN_CONSTANTS,
  CHAIN_DOMAIN_G_PER_MOL,
  CHAIN_DOMAIN_UNITS,
  degreeOfPolymerisationFromMolarMass,
  dextroseEquivalentFromMolarMass,
  dextroseEquivalentOfChain,
  meanDegreeOfPolymerisation,
  molarMassFromDegreeOfPolymerisation,
} from './chain-length.js';
export {
  DEXTROSE_EQUIVALENT_CONSTANTS,
  DEXTROSE_EQUIVALENT_TESTED,
  dextroseEquivalentFromProfile,
} from './dextrose-equivalent.js';
export {
  GLUCOSE_TIMES_HUNDRED_G_PER_MOL,
  LONG_CHAIN_ENDS,
  LONG_CHAIN_SHARE,
  MOLAR_MASS_DOMAIN_DEXTROSE_EQUIVALENT,
  MOLAR_MASS_TESTED_DEXTROSE_EQUIVALENT,
  molarMassFromDextroseEquivalent,
  molarMassFromProfile,
} from './molar-mass.js';
export {
  ACID_PROFILE_TESTED_DEXTROSE_EQUIVALENT,
  profileFromDextroseEquivalent,
} from './profile.js';
export type { ProfileRow, ProfileRows } from './profile-rows.js';
export {
  ACID_PROFILES,
  CONVERSION_DEXTROSE_EQUIVALENTS,
  ENZYME_PROFILES,
  HIGH_MALTOSE_PROFILE,
} from './profile-rows.js';
export { COPPER_REDUCING_ENDS, THEORY_REDUCING_ENDS } from './reducing-ends.js';
export { PROFILE_SUM_LIMITS } from './require-profile.js';
export type { Conversion, Profile } from './types.js';
export {
  TYPICAL_PROFILE_DOMAIN_DEXTROSE_EQUIVALENT,
  TYPICAL_PROFILE_TESTED_DEXTROSE_EQUIVALENT,
  typicalProfile,
} from './typical-profile.js';
