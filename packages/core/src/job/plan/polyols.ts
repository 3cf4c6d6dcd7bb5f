import { isNone } from '../../foundation/results/is-none.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { polyolShare } from '../../models/nutrition/index.js';
import { figure } from './figure.js';
import type { PlannedPolyols } from './types.js';

/** Sugar alcohols in the sweet and in a piece; nothing when there are none. */
export function planPolyols(
  finished: Mixture,
  pieceG: number | undefined,
): PlannedPolyols | undefined {
  // Asked for one gram, so that a crumb is no harder a question than a piece.
  const gram = polyolShare(finished, { pieceG: 1 });
  if (isNone(gram)) return undefined;
  const { polyolsG: massFraction, share, band } = gram;
  if (pieceG === undefined) return { massFraction };
  const childShare = share * pieceG;
  return {
    massFraction,
    perPieceG: massFraction * pieceG,
    childShare: figure(childShare, [band[0] * pieceG, band[1] * pieceG], 'polyol-guide'),
    childPieces: Math.floor(1 / childShare),
  };
}
