import type { Span } from '../../foundation/results/types.js';
import {
  fahrenheitDifferenceFromKelvin,
  kelvinDifferenceFromFahrenheit,
} from '../../foundation/units/temperature.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { THERMOMETER_DOMAIN_C } from './scale-line.js';

/** Why one reading in a pan may differ from another. */
export type SpreadCauseId =
  | 'not-immersed-to-mark'
  | 'in-foam-or-steam'
  | 'on-the-base'
  | 'near-the-wall'
  | 'slow-instrument'
  | 'too-shallow'
  | 'not-calibrated';

/** A cause, and what it does to the reading. */
export type SpreadCause = {
  readonly id: SpreadCauseId;
  /** Least and greatest error it makes, K; below zero it reads low. */
  readonly errorK: Span;
  /** One wrong reading of this kind beside a good one explains the whole spread. */
  readonly alone: boolean;
};

/** Errors of readings in one pan, °F as kitchens print them: common practice. */
export const SPREAD_CAUSES = [
  { id: 'not-immersed-to-mark', errorF: [-16, 0] },
  { id: 'in-foam-or-steam', errorF: [-15, -5] },
  { id: 'on-the-base', errorF: [5, 15] },
  { id: 'near-the-wall', errorF: [2, 8] },
  { id: 'slow-instrument', errorF: [-8, -2] },
  { id: 'too-shallow', errorF: [-10, 5] },
  { id: 'not-calibrated', errorF: [-5, 5] },
] as const satisfies readonly { readonly id: SpreadCauseId; readonly errorF: Span }[];

/** Two good kitchen thermometers differ by this much and mean the same, K. */
export const SPREAD_WITHIN_TOLERANCE_K = 1;

/**
 * Why the readings in one pan do not agree.
 *
 * Twenty degrees Fahrenheit between two places in a pan are common. Each cause makes errors of a
 * size and a sign of its own. A cause is likely if one such reading beside a good one, or beside
 * another wrong one, can make the spread. Ask about the causes that explain it alone
 * first: they come first, the one with the larger error before the smaller.
 *
 * @param readingsC - Two or more readings of one mass at one time, °C, −50 to 400.
 * @returns `spreadK`, and `likelyCauses` in the order to ask about them: none within 1 K, and none
 *   where no two causes together reach that far (then one of the thermometers is broken).
 * @throws {@link ModelRangeError} with fewer than two readings, or one that cannot be meant.
 * @example
 * readingSpread([143, 151.2]).likelyCauses[0]?.id // 'not-immersed-to-mark'
 * @source common-practice
 */
export function readingSpread(readingsC: readonly number[]): {
  readonly spreadK: number;
  readonly likelyCauses: readonly SpreadCause[];
} {
  if (readingsC.length < 2) {
    throw new ModelRangeError('A spread needs two readings or more.', {
      code: 'outside-range',
      parameter: 'readingsC',
      received: readingsC,
    });
  }
  for (const readingC of readingsC) requireWithin('readingC', readingC, THERMOMETER_DOMAIN_C);
  const spreadK = Math.max(...readingsC) - Math.min(...readingsC);
  if (spreadK <= SPREAD_WITHIN_TOLERANCE_K) return { spreadK, likelyCauses: [] };
  const spreadF = fahrenheitDifferenceFromKelvin(spreadK);
  const likely = SPREAD_CAUSES.filter(({ errorF }) =>
    SPREAD_CAUSES.some((other) => makes(errorF, other.errorF, spreadF)),
  ).map(({ id, errorF }): SpreadCause => {
    const [low, high] = errorF;
    return {
      id,
      errorK: [kelvinDifferenceFromFahrenheit(low), kelvinDifferenceFromFahrenheit(high)],
      alone: makes(errorF, [0, 0], spreadF),
    };
  });
  return { spreadK, likelyCauses: likely.sort(byUse) };
}

/** Whether two readings with these errors can lie just that far apart. */
function makes([low, high]: Span, [otherLow, otherHigh]: Span, apart: number): boolean {
  const lowest = low - otherHigh;
  const highest = high - otherLow;
  const least = Math.max(lowest, -highest, 0);
  const greatest = Math.max(-lowest, highest);
  // A hair of room: a spread worked out from the printed error is no larger than it.
  return apart >= least - 1e-9 && apart <= greatest + 1e-9;
}

function byUse(a: SpreadCause, b: SpreadCause): number {
  if (a.alone !== b.alone) return a.alone ? -1 : 1;
  return greatest(b) - greatest(a);
}

function greatest({ errorK: [low, high] }: SpreadCause): number {
  return Math.max(-low, high);
}
