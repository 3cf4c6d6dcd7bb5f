/** The air above the pan. */
export {
  AIR_PRESSURE_DOMAIN_PA,
  absolutePressure,
  GAUGE_VACUUM_DOMAIN_PA,
} from './gauge-vacuum.js';
export {
  SEA_LEVEL_PRESSURE_PA,
  STANDARD_PRESSURE_CONSTANTS,
  STANDARD_PRESSURE_DOMAIN_M,
  STANDARD_PRESSURE_TESTED_M,
  standardPressure,
} from './standard-pressure.js';
export {
  SEA_LEVEL_PRESSURE_DOMAIN_PA,
  SEA_LEVEL_PRESSURE_TESTED_PA,
  STATION_PRESSURE_CONSTANTS,
  STATION_PRESSURE_TESTED_M,
  stationPressure,
} from './station-pressure.js';
