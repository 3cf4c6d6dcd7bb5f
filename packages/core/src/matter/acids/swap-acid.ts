import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import { ACID_MASS_DOMAIN_G } from './acid-masses.js';
import { ACIDS } from './constants.js';
import { equalSournessOf, requireSour, type SourAcid } from './sourness.js';

/**
 * How much of one acid stands in for another.
 *
 * By `sourness` for the tongue: from memory, give or take 15 per cent for each acid but citric. By
 * `titration` for the same amount of acid, which is chemistry and exact. The two differ: malic acid
 * tastes sourer than it titrates.
 *
 * @equation m₂ = m₁·f₂/f₁; by titration f = M/n
 * @param input - `from`, `to`: citric, malic, tartaric or lactic acid; `massG` of the first, dry
 *   and without crystal water, 0 to 10⁹ g; `by`: `sourness` or `titration`.
 * @returns `massG` and `band` of the second, g.
 * @throws {@link ModelRangeError} outside the domain, or for another acid.
 * @example
 * swapAcid({ from: 'citric-acid', to: 'malic-acid', massG: 10, by: 'sourness' }).massG // 8.5 g
 * @source recalled-acids
 */
export function swapAcid({
  from,
  to,
  massG,
  by,
}: {
  readonly from: SourAcid;
  readonly to: SourAcid;
  readonly massG: number;
  readonly by: 'sourness' | 'titration';
}): { readonly massG: number; readonly band: Span } {
  requireSour('from', from);
  requireSour('to', to);
  requireWithin('massG', massG, ACID_MASS_DOMAIN_G);
  if (by === 'titration') {
    const swapped = (massG * gramsPerProton(to)) / gramsPerProton(from);
    return { massG: swapped, band: [swapped, swapped] };
  }
  if (by !== 'sourness') throw unknownName('by', by, 'Acids are swapped by sourness or titration');
  const [a, b] = [equalSournessOf(from), equalSournessOf(to)];
  const swapped = (massG * b.value) / a.value;
  if (from === to) return { massG: swapped, band: [swapped, swapped] };
  return {
    massG: swapped,
    band: [(massG * b.band[0]) / a.band[1], (massG * b.band[1]) / a.band[0]],
  };
}

function gramsPerProton(acid: SourAcid): number {
  const { molarMassGPerMol, titratablePerMole } = ACIDS[acid];
  return molarMassGPerMol.value / titratablePerMole;
}
