/** Water and its steam. */
export {
  WATER_BOILING_DOMAIN_PA,
  waterBoilingPoint,
} from './boiling-point.js';
export { LATENT_HEAT_DOMAIN_C, LATENT_HEAT_TABLE, waterLatentHeat } from './latent-heat.js';
export {
  VAPOUR_PRESSURE_CONSTANTS,
  VAPOUR_PRESSURE_DOMAIN_C,
  waterVapourPressure,
} from './vapour-pressure.js';
