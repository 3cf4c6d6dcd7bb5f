export {
  BROWNING_ENERGY_KJ_PER_MOL,
  BROWNING_ONSETS,
  THERMAL_LOAD_CONSTANTS,
  THERMAL_LOAD_DOMAIN_C,
  THERMAL_LOAD_DOMAIN_S,
  THERMAL_LOAD_TESTED_C,
} from './constants.js';
export { thermalLoad, type WarmPoint } from './thermal-load.js';
