import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';

const source = 'graining-time-fit',
  grade = 'derived';

/** From decades of time to points, and from points to words. */
export const GRAINING_SCORE_CONSTANTS = {
  atTheTarget: { value: 50, source, grade, note: 'grains just when it should not yet' },
  pointsPerDecade: { value: 33.3, source, grade },
  watchFrom: { value: 25, source, grade },
  likelyFrom: { value: 50, source, grade },
  nearCertainAbove: { value: 75, source, grade },
} as const satisfies CitedConstants;

/** How likely a sweet grains before its time. */
export type GrainingWord = 'low' | 'watch' | 'likely' | 'near-certain';

/** A graining time beside the time that is wanted. */
export type GrainingScore = {
  /** 0–100, 50 where both are the same. */
  readonly score: number;
  /** A decade of time either way. */
  readonly band: Span;
  readonly word: GrainingWord;
};

const SCORE: Span = [0, 100];
const TIME_DOMAIN_DAYS: Span = [1e-9, Infinity];

/**
 * Whether a sweet grains before its time, as a word.
 *
 * The word is what to show: the times behind it are known to a factor of ten, which is 33 points
 * here. Where `grainingTime` answers `not-supersaturated` there is no such risk at all.
 *
 * @equation score = 50 + 33.3·log₁₀(target/days), held between 0 and 100
 * @param options - `days` until it grains, as `grainingTime` gives them; `targetDays` it has to
 *   stand: the shelf life wanted, or the minutes of work over 1440. Both over 10⁻⁹.
 * @returns `score`, 0–100; `band`, a decade either way; `word`: `low` under 25, `watch` under 50,
 *   `likely` to 75, `near-certain` above.
 * @throws {@link ModelRangeError} if a time is not a positive number.
 * @example
 * grainingScore({ days: 79, targetDays: 365 }) // { score: 72.1, word: 'likely' }
 * @source graining-time-fit
 */
export function grainingScore({
  days,
  targetDays,
}: {
  readonly days: number;
  readonly targetDays: number;
}): GrainingScore {
  requireWithin('days', days, TIME_DOMAIN_DAYS);
  requireWithin('targetDays', targetDays, TIME_DOMAIN_DAYS);
  const { atTheTarget, pointsPerDecade } = GRAINING_SCORE_CONSTANTS;
  const raw =
    atTheTarget.value + pointsPerDecade.value * (Math.log10(targetDays) - Math.log10(days));
  const score = held(raw);
  return {
    score,
    band: [held(raw - pointsPerDecade.value), held(raw + pointsPerDecade.value)],
    word: wordFor(score),
  };
}

function held(score: number): number {
  return Math.min(SCORE[1], Math.max(SCORE[0], score));
}

function wordFor(score: number): GrainingWord {
  const { watchFrom, likelyFrom, nearCertainAbove } = GRAINING_SCORE_CONSTANTS;
  if (score < watchFrom.value) return 'low';
  if (score < likelyFrom.value) return 'watch';
  return score <= nearCertainAbove.value ? 'likely' : 'near-certain';
}
