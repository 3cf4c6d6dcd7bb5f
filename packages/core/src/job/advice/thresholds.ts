import type { CitedConstants } from '../../foundation/validity/constants.js';

const practice = { source: 'common-practice', grade: 'practice' } as const;
const assumed = { source: 'assumption', grade: 'assumed' } as const;

/**
 * When advice speaks. Batches known to be good raise nothing above a note and batches known to be
 * bad raise at least what is known of them; a threshold that breaks either is moved.
 */
export const ADVICE_THRESHOLDS = {
  panFullFraction: { value: 1 / 3, ...practice },
  panBoilsOverFraction: { value: 0.5, ...practice },
  probeDepthMm: { value: 25, ...practice },
  thermocoupleDepthMm: { value: 15, ...practice },
  longStemDepthMm: { value: 50, ...practice },
  aboveScaleK: { value: 5, ...practice },
  weatherOrThermometerK: { value: 1, ...practice },
  neitherWeatherK: { value: 3, ...practice },
  causeMattersK: { value: 2, ...practice },
  reserveNoteK: { value: 15, ...assumed },
  reserveMayK: { value: 5, ...assumed },
  kneePassedK: { value: 5, ...assumed },
  sugarYellowsC: { value: 165, ...practice },
  sugarBurnsC: { value: 170, ...practice },
  workRoomHumidity: { value: 0.45, ...practice },
  dampRoomHumidity: { value: 0.65, ...practice },
  wholeDoctorShare: { value: 0.15, ...practice },
  sugarSweetShare: { value: 0.5, ...assumed },
  dextroseShare: { value: 0.2, ...practice },
  lateWaterNotePoints: { value: 0.003, ...practice },
  lateWaterMayPoints: { value: 0.01, ...practice },
  waterToDissolvePerSucrose: { value: 0.25, ...practice },
  acidShare: { value: 0.02, ...practice },
  piecesNearlyShare: { value: 0.9, ...assumed },
} as const satisfies CitedConstants;
