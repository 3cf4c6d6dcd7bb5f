export {
  type ThermometerReading,
  type TrueTemperature,
  thermometerReading,
  trueFromReading,
} from './correction.js';
export {
  LAG_CONSTANTS,
  READS_IN_DOMAIN_S,
  RISE_DOMAIN_K_PER_MIN,
  thermometerLag,
} from './lag.js';
export {
  readingSpread,
  SPREAD_CAUSES,
  SPREAD_WITHIN_TOLERANCE_K,
  type SpreadCause,
  type SpreadCauseId,
} from './reading-spread.js';
export {
  type Correction,
  THERMOMETER_CONSTANTS,
  THERMOMETER_DOMAIN_C,
  THERMOMETER_SCALE_DOMAIN_K,
  type ThermometerChecks,
} from './scale-line.js';
export { STEM_CONSTANTS, stemCorrection } from './stem.js';
