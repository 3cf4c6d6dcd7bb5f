import { grainingWays } from '../changes/graining-ways.js';
import type { AdviceContext } from './context.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice } from './types.js';

/** A change must do more than cross the line by a hair. */
const SURE = 2;

/**
 * It may grain: in the pan, wrapped in the store, or bare in the room. The times behind it are
 * good to a factor of ten, so it never says more than that it may disappoint.
 */
export function mayGrain(context: AdviceContext): Advice | undefined {
  const { graining, batch, lines, early } = context;
  const { grainsNoteScore, grainsMayScore } = ADVICE_THRESHOLDS;
  if (graining.kind === 'none') return undefined;
  const answer = graining[graining.worst];
  if (answer === undefined || answer.score < grainsNoteScore.value) return undefined;
  // A sweet without a doctor is told so already.
  if (
    graining.worst === 'process' &&
    graining.doctorMassFraction < ADVICE_THRESHOLDS.wholeDoctorShare.value
  )
    return undefined;
  return {
    code: 'may-grain',
    severity: answer.score >= grainsMayScore.value ? 'may-disappoint' : 'note',
    path: graining.worst === 'open' ? '/wrap' : '/formula',
    // In damp air the doctor is not what is missing.
    numbers: graining.worst === 'open' ? {} : { doctorShare: graining.doctorMassFraction },
    names: { where: graining.worst },
    remedies: grainingWays({ batch, lines, inverted: early?.byAcid ?? 0 })
      .filter(
        ({ score }) =>
          score <
          (answer.score >= grainsMayScore.value ? grainsMayScore : grainsNoteScore).value - SURE,
      )
      .map(({ remedy }) => remedy),
  };
}
