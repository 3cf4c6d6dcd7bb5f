export {
  CANDY_DENSITY,
  CAVITY_DOMAIN_ML,
  type CandyDensity,
  type CandyKind,
  type CandyState,
  candyMassDensity,
  cavityFromPieceMass,
  pieceMassFromCavity,
} from './candy-mass.js';
export { CHARGE_CONSTANTS, chargeDensity } from './charge.js';
export {
  DENSITY_DOMAIN_BRIX,
  DENSITY_DOMAIN_C,
  DENSITY_TESTED_BRIX,
  DENSITY_TESTED_C,
  densityFromBrix,
  SUCROSE_DENSITY_COEFFICIENTS,
  WATER_DENSITY_COEFFICIENTS,
} from './sucrose-solution.js';
