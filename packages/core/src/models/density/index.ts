export { AIR_DOMAIN_VOLUME_FRACTION, aeratedDensity, airFromDensity } from './aerated.js';
export { BAUME_CONSTANTS, baumeFromBrix, brixFromBaume } from './baume.js';
export {
  CANDY_DENSITY,
  CAVITY_DOMAIN_ML,
  type CandyDensity,
  type CandyKind,
  type CandyState,
  candyMassDensity,
  WEIGHED_CONSTANTS,
  WEIGHED_DOMAIN_G_PER_ML,
  WEIGHED_DOMAIN_ML,
  type WeighedPiece,
} from './candy-mass.js';
export { cavityFromPieceMass, pieceMassFromCavity } from './cavity.js';
export { CHARGE_CONSTANTS, chargeDensity } from './charge.js';
export {
  COMMERCIAL_BAUME_CONSTANTS,
  COMMERCIAL_BAUME_DOMAIN,
  COMMERCIAL_SOLIDS_AT_43,
  COMMERCIAL_SOLIDS_BESIDE_43,
  COMMERCIAL_SOLIDS_DOMAIN_BAUME,
  COMMERCIAL_SOLIDS_DOMAIN_DEXTROSE_EQUIVALENT,
  drySolidsFromCommercialBaume,
  glucoseSyrupCommercialBaume,
  specificGravityFromCommercialBaume,
} from './commercial-baume.js';
export {
  type GlucoseSyrup,
  glucoseSyrupDensity,
  SYRUP_DENSITY_CONSTANTS,
  SYRUP_DENSITY_DOMAIN_DEXTROSE_EQUIVALENT,
  SYRUP_DENSITY_DOMAIN_DRY_SOLIDS,
  SYRUP_DENSITY_TESTED_DEXTROSE_EQUIVALENT,
  SYRUP_DENSITY_TESTED_DRY_SOLIDS,
} from './glucose-syrup-density.js';
export {
  drySolidsFromGlucoseSyrupRefractiveIndex,
  glucoseSyrupRefractiveIndex,
  SYRUP_REFRACTION_COEFFICIENTS,
  SYRUP_REFRACTION_DOMAIN_C,
  SYRUP_REFRACTION_DOMAIN_DRY_SOLIDS,
  SYRUP_REFRACTION_TESTED_C,
  SYRUP_REFRACTION_TESTED_DRY_SOLIDS,
} from './glucose-syrup-refraction.js';
export {
  brixFromRefractiveIndex,
  REFRACTION_COEFFICIENTS,
  REFRACTION_POINTS,
  refractiveIndexFromBrix,
} from './refractive-index.js';
export {
  brixTemperatureCorrection,
  type NoReading,
  REFRACTOMETER_DOMAIN_C,
  REFRACTOMETER_READS_C,
  REFRACTOMETER_TEMPERATURE_CONSTANTS,
  REFRACTOMETER_TESTED_BRIX,
  REFRACTOMETER_TESTED_C,
  type TemperatureCorrection,
} from './refractometer-temperature.js';
export {
  brixFromSpecificGravity,
  READING_DOMAIN_BRIX,
  specificGravityFromBrix,
} from './specific-gravity.js';
export {
  drySolidsFromSucroseRefractometer,
  OVERREAD_CONSTANTS,
  sucroseRefractometerOverread,
} from './sucrose-refractometer.js';
export {
  brixFromDensity,
  DENSITY_DOMAIN_BRIX,
  DENSITY_TESTED_BRIX,
  densityFromBrix,
  SUCROSE_DENSITY_COEFFICIENTS,
} from './sucrose-solution.js';
export {
  DENSITY_DOMAIN_C,
  DENSITY_TESTED_C,
  WATER_DENSITY_COEFFICIENTS,
  waterDensity,
} from './water-density.js';
