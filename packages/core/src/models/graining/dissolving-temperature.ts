import { findRoot } from '../../foundation/numeric/find-root.js';
import type { Checked, None, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { SpeciesId } from '../../matter/species.js';
import { along, pieceAt, recalled, rowsOf } from './solubility.js';
import { SUCROSE_SOLUBILITY_DOMAIN_C, sucroseSolubility } from './sucrose-solubility.js';

/** Fewer rows than this give a slope, and no idea how it bends. */
const FEWEST_ROWS = 3;
const TOLERANCE_K = 1e-3;
const SHARE: Span = [0, 1];

/** From where on a solution is clear. */
export type DissolvingTemperature = {
  readonly dissolvesAtC: number;
  /** It dissolves there and may do so colder: the rows begin there. */
  readonly atOrBelow: boolean;
};

/** Why there is no dissolving temperature. */
export type NoDissolvingTemperature = None<'no-data' | 'too-few-points' | 'beyond-the-data'>;

/**
 * How warm a solution must get before the last crystal can go.
 *
 * Time, stirring and the size of the crystals come on top. A substance with two printed rows gets no
 * answer: boil such a syrup until it is clear.
 *
 * @equation w(T) = massFraction, w by `solubility`
 * @param species - The dissolved substance, alone in water.
 * @param options - `massFraction` of it in the solution, 0 to 1.
 * @returns `dissolvesAtC`, °C, and `atOrBelow` where even the coldest row holds more; `none` with
 *   `no-data`, with `too-few-points` under three rows, or with `beyond-the-data` where even the
 *   warmest row holds less.
 * @throws {@link ModelRangeError} if the share lies outside 0 to 1.
 * @example
 * dissolvingTemperature('sucrose', { massFraction: 0.7 }) // { dissolvesAtC: 39.45, atOrBelow: false, warnings: [] }
 * @source vavrinecz-1962, hartel-2011, gillis-lowe, hudson-lowe, jackson-silsbee-1922, young-1952
 */
export function dissolvingTemperature(
  species: SpeciesId,
  { massFraction }: { readonly massFraction: number },
): Checked<DissolvingTemperature> | NoDissolvingTemperature {
  requireWithin('massFraction', massFraction, SHARE);
  if (species === 'sucrose') return ofSucrose(massFraction);
  const rows = rowsOf(species);
  if (rows === undefined) return { kind: 'none', reason: 'no-data' };
  if (rows.length < FEWEST_ROWS) return { kind: 'none', reason: 'too-few-points' };
  const percent = massFraction * 100;
  const coldest = rows[0];
  if (percent <= coldest[1]) {
    return {
      dissolvesAtC: coldest[0],
      atOrBelow: true,
      warnings: recalled(species, [coldest, coldest], massFraction),
    };
  }
  const piece = pieceAt(rows, percent, 1);
  if (piece === undefined) return { kind: 'none', reason: 'beyond-the-data' };
  return {
    dissolvesAtC: along(piece, percent, 1),
    atOrBelow: false,
    warnings: recalled(species, piece, massFraction),
  };
}

function ofSucrose(massFraction: number): Checked<DissolvingTemperature> | NoDissolvingTemperature {
  const [coldest, warmest] = SUCROSE_SOLUBILITY_DOMAIN_C;
  const room = (temperatureC: number) =>
    sucroseSolubility(temperatureC).sucroseMassFraction - massFraction;
  if (room(coldest) >= 0) return { dissolvesAtC: coldest, atOrBelow: true, warnings: [] };
  if (room(warmest) < 0) return { kind: 'none', reason: 'beyond-the-data' };
  const dissolvesAtC = findRoot(room, SUCROSE_SOLUBILITY_DOMAIN_C, { tolerance: TOLERANCE_K });
  return { dissolvesAtC, atOrBelow: false, warnings: [] };
}
