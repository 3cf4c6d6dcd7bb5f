export {
  SUCROSE_SOLUBILITY_CONSTANTS,
  SUCROSE_SOLUBILITY_DOMAIN_C,
  sucroseSolubility,
} from './sucrose-solubility.js';
