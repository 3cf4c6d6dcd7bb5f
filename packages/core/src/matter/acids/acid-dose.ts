import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { ACID_MASS_DOMAIN_G } from './acid-masses.js';
import { requireSour, type SourAcid } from './sourness.js';
import { ACID_DOSES } from './taste-constants.js';

/**
 * How much acid boiled sweets are given. Common practice, not a limit.
 *
 * Weigh acids, never spoon them; the powders burn eyes and lungs. Over two grams in a hundred the
 * mouth gets sore, and sour sweets etch teeth. Add it last, into a mass under about 120 °C, and
 * pour at once: `inversion` says what waiting costs.
 *
 * @param input - `acid`: citric, malic, tartaric or lactic acid; `finishedMassG`: the finished
 *   sweets, 0 to 10⁹ g.
 * @returns `massG`, the usual dose, and `band`, the mildest and the sourest in use, g, dry and
 *   without crystal water.
 * @throws {@link ModelRangeError} outside the domain, or for another acid.
 * @example
 * acidDose({ acid: 'citric-acid', finishedMassG: 500 }).massG // 5 g
 * @source common-practice
 */
export function acidDose({
  acid,
  finishedMassG,
}: {
  readonly acid: SourAcid;
  readonly finishedMassG: number;
}): { readonly massG: number; readonly band: Span } {
  requireSour('acid', acid);
  requireWithin('finishedMassG', finishedMassG, ACID_MASS_DOMAIN_G);
  const { value, low, high } = ACID_DOSES[acid];
  const share = finishedMassG / 100;
  return { massG: value * share, band: [low * share, high * share] };
}
