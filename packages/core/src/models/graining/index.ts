export {
  type DissolvingTemperature,
  dissolvingTemperature,
  type NoDissolvingTemperature,
} from './dissolving-temperature.js';
export {
  FORMING_DOMAIN_C,
  GRAINING_CONSTANTS,
  GRAINING_DOMAIN_C,
} from './graining-constants.js';
export {
  GRAINING_SCORE_CONSTANTS,
  type GrainingScore,
  type GrainingWord,
  grainingScore,
} from './graining-score.js';
export {
  type GrainingTime,
  grainingTime,
  grainingTimeInProcess,
  type NoGraining,
} from './graining-time.js';
export { SATURATION_CONSTANTS, SUPERSATURATION_ZONES } from './saturation-constants.js';
export { type NoSolubility, SOLUBILITY_DOMAIN_C, solubility } from './solubility.js';
export { SOLUBILITY_ROWS, type SolubilityRow, type SolubilityRows } from './solubility-rows.js';
export {
  CHARLES_SOLUBILITY_CONSTANTS,
  CHARLES_SOLUBILITY_DOMAIN_C,
  type SolubilityEquation,
  SUCROSE_SOLUBILITY_CONSTANTS,
  SUCROSE_SOLUBILITY_DOMAIN_C,
  sucroseSolubility,
} from './sucrose-solubility.js';
export {
  OTHER_SOLIDS_TESTED,
  type SaturationEquation,
  type Supersaturation,
  type SupersaturationZone,
  sucroseSupersaturation,
} from './supersaturation.js';
