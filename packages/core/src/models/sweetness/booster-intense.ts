import { findRoot } from '../../foundation/numeric/find-root.js';
import type { Span } from '../../foundation/results/types.js';
import {
  INTENSE_RESPONSE,
  type IntenseSweetener,
  TASTING_CONSTANTS,
} from './intense-parameters.js';
import { shareForResponse } from './intense-response.js';

/** What a dose is worked out from. */
export type DoseQuestion = {
  /** They share the work in equal parts. */
  readonly sweeteners: readonly IntenseSweetener[];
  readonly target: number;
  /** How sweet the rest is without them. */
  readonly rest: number;
  readonly concentrationGPer100Ml: number;
  /** By how much they raise each other; 1 for one alone. */
  readonly sigma: number;
};

/**
 * Shares of the dry sweet, one for each sweetener; all 0 where the rest is sweet enough; nothing
 * where they level off first.
 *
 * They displace what they sweeten, by a thousandth or so; that is counted, so that the answer put
 * into the mixture gives the target back.
 */
export function intenseDose(question: DoseQuestion): readonly number[] | undefined {
  const { sweeteners, target, rest, concentrationGPer100Ml: x, sigma } = question;
  const least = x * (target - rest);
  if (least <= 0) return sweeteners.map(() => 0);
  const dosesAt = (response: number) =>
    sweeteners.map((one) => shareForResponse(one, response / (sigma * sweeteners.length), x));
  const short = (response: number) => {
    const share = dosesAt(response).reduce((sum, dose) => sum + dose, 0);
    return x * (target - (1 - share) * rest) - response;
  };
  const most = sigma * sweeteners.length * lowestCeiling(sweeteners);
  if (least >= most || short(most) > 0) return undefined;
  return dosesAt(findRoot(short, [least, most]));
}

/** Lowest and highest shares: the rest as sweet as it may be, at weak and at strong tasting. */
export function intenseDoseBand(
  question: DoseQuestion,
  rests: Readonly<Record<'weak' | 'strong', Span>>,
  concentrations: Span,
): readonly Span[] {
  const [weak, strong] = concentrations;
  const low = intenseDose({ ...question, rest: rests.weak[1], concentrationGPer100Ml: weak });
  const high = intenseDose({ ...question, rest: rests.strong[0], concentrationGPer100Ml: strong });
  return question.sweeteners.map((_, at): Span => [low?.[at] ?? 1, high?.[at] ?? 1]);
}

/** Nearer its maximum than this, a little more sweetness takes any amount. */
function lowestCeiling(sweeteners: readonly IntenseSweetener[]): number {
  const maxima = sweeteners.map((one) => INTENSE_RESPONSE[one].maximumPercent.value);
  return TASTING_CONSTANTS.ceilingShare.value * Math.min(...maxima);
}
