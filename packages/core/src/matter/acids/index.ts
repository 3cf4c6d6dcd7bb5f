export { acidDose } from './acid-dose.js';
export { ACID_MASS_DOMAIN_G, ACID_WATER_DOMAIN_G } from './acid-masses.js';
export { type Acidity, acidity } from './acidity.js';
export { BUFFER_DOMAIN_PH, type Buffer, bufferForPH } from './buffer.js';
export {
  ACIDITY_CONSTANTS,
  ACIDITY_DOMAIN_C,
  ACIDS,
  type Acid,
  ALKALINITY_DOMAIN_MMOL_PER_L,
  SODIUM_CITRATE_DIHYDRATE_G_PER_MOL,
  SYRUP_PH,
  SYRUP_PH_DOMAIN,
  TARTRATE_SOLUBILITY,
} from './constants.js';
export { type SourAcid, sourness } from './sourness.js';
export { swapAcid } from './swap-acid.js';
export { ACID_DOSES, EQUAL_SOURNESS, SOURNESS_CONSTANTS } from './taste-constants.js';
export { titratableAcidity } from './titratable-acidity.js';
export type {
  AcidityOptions,
  AcidMasses,
  AcidSource,
  AcidSpecies,
  AcidWater,
} from './types.js';
