// biome-ignore-all format: one threshold a line, to be read as a table

import type { CitedConstants } from '../../foundation/validity/constants.js';


/**
 * When advice speaks. Batches known to be good raise nothing above a note and batches known to be
 * bad raise at least what is known of them; a threshold that breaks either is moved.
 */
export const ADVICE_THRESHOLDS = {
  panFullFraction: { value: 0.3333, source: 'common-practice', grade: 'practice' },
  panBoilsOverFraction: { value: 0.5, source: 'common-practice', grade: 'practice' },
  probeDepthMm: { value: 25, source: 'common-practice', grade: 'practice' },
  thermocoupleDepthMm: { value: 15, source: 'common-practice', grade: 'practice' },
  longStemDepthMm: { value: 50, source: 'common-practice', grade: 'practice' },
  aboveScaleK: { value: 5, source: 'common-practice', grade: 'practice' },
  weatherOrThermometerK: { value: 1, source: 'common-practice', grade: 'practice' },
  neitherWeatherK: { value: 3, source: 'common-practice', grade: 'practice' },
  causeMattersK: { value: 2, source: 'common-practice', grade: 'practice' },
  reserveNoteK: { value: 15, source: 'assumption', grade: 'assumed' },
  reserveMayK: { value: 5, source: 'assumption', grade: 'assumed' },
  kneePassedK: { value: 5, source: 'assumption', grade: 'assumed' },
  sugarYellowsC: { value: 165, source: 'common-practice', grade: 'practice' },
  sugarBurnsC: { value: 170, source: 'common-practice', grade: 'practice' },
  workRoomHumidity: { value: 0.45, source: 'common-practice', grade: 'practice' },
  dampRoomHumidity: { value: 0.65, source: 'common-practice', grade: 'practice' },
  wholeDoctorShare: { value: 0.15, source: 'common-practice', grade: 'practice' },
  sugarSweetShare: { value: 0.5, source: 'assumption', grade: 'assumed' },
  dextroseShare: { value: 0.2, source: 'common-practice', grade: 'practice' },
  lateWaterNotePoints: { value: 0.003, source: 'common-practice', grade: 'practice' },
  lateWaterMayPoints: { value: 0.01, source: 'common-practice', grade: 'practice' },
  waterToDissolvePerSucrose: { value: 0.25, source: 'common-practice', grade: 'practice' },
  acidShare: { value: 0.02, source: 'common-practice', grade: 'practice' },
  earlyInvertMay: { value: 0.1, source: 'assumption', grade: 'assumed' },
  earlyInvertFails: { value: 0.3, source: 'assumption', grade: 'assumed' },
  lagNoteK: { value: 3, source: 'assumption', grade: 'assumed' },
  grainsNoteScore: { value: 50, source: 'assumption', grade: 'assumed' },
  grainsMayScore: { value: 75, source: 'assumption', grade: 'assumed' },
  dullSweetness: { value: 0.75, source: 'assumption', grade: 'assumed' },
  muchWaterPerSucrose: { value: 0.7, source: 'common-practice', grade: 'practice' },
  piecesNearlyShare: { value: 0.9, source: 'assumption', grade: 'assumed' },
} as const satisfies CitedConstants;
