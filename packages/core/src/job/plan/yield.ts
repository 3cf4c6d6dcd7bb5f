import { joinBands } from '../../foundation/results/band.js';
import type { Span } from '../../foundation/results/types.js';
import { inPieces, type Wanted } from '../batch/pieces.js';
import type { BatchDocument } from '../batch/types.js';
import { type Ledger, leaveOut } from '../ledger.js';
import { figure, sure } from './figure.js';
import type { PlannedYield } from './types.js';

/** A count that misses a whole piece by less than this is that piece: a ten-thousandth is not weighed. */
const SAME_PIECE = 1e-6;

/** What comes out, in grams, pieces and fillings of the mould. */
export function planYield(
  batch: BatchDocument,
  wanted: Wanted,
  finishedG: number,
  finishedBand: Span,
  ledger: Ledger,
): PlannedYield {
  const { piece, loss, breakage, count } = wanted;
  const piecesG = (mass: number, lost: number, broken: number) =>
    inPieces(mass, lost, loss.kind, broken);
  const wholeG = piecesG(finishedG, loss.amount.value, breakage.value);
  const wholeBand = joinBands(
    wholeG,
    [
      piecesG(finishedBand[0], loss.amount.value, breakage.value),
      piecesG(finishedBand[1], loss.amount.value, breakage.value),
    ],
    [
      piecesG(finishedG, loss.amount.high, breakage.value),
      piecesG(finishedG, loss.amount.low, breakage.value),
    ],
    [
      piecesG(finishedG, loss.amount.value, breakage.high),
      piecesG(finishedG, loss.amount.value, breakage.low),
    ],
  );
  const left =
    loss.kind === 'film'
      ? (g: number) => Math.min(g, finishedG)
      : (share: number) => share * finishedG;
  const counted = piece === undefined ? undefined : wholeG / piece.value;
  const countBand =
    piece === undefined || counted === undefined
      ? undefined
      : joinBands(
          counted,
          [wholeBand[0] / piece.value, wholeBand[1] / piece.value],
          [wholeG / piece.high, wholeG / piece.low],
        );
  const pieces =
    counted === undefined || countBand === undefined
      ? undefined
      : figure(
          whole(counted),
          [whole(countBand[0]), whole(countBand[1])],
          loss.kind === 'film' ? 'pan-film' : 'mass-balance',
        );
  const { cavities, moulds } = batch.mould ?? {};
  leaveOut(ledger, '/mould/cavities', cavities);
  if (cavities !== undefined) leaveOut(ledger, '/mould/moulds', moulds);
  return {
    finishedG: figure(finishedG, finishedBand, 'mass-balance'),
    leftBehindG: figure(
      left(loss.amount.value),
      [left(loss.amount.low), left(loss.amount.high)],
      loss.kind === 'film' ? 'pan-film' : 'mass-balance',
    ),
    breakFraction: breakage.value,
    piecesG: figure(wholeG, wholeBand, 'mass-balance'),
    pieceG:
      piece === undefined
        ? undefined
        : wanted.pieceIsGiven
          ? sure(piece.value, 'given')
          : figure(piece.value, [piece.low, piece.high], 'density'),
    cavityMl: wanted.cavityMl,
    pieces,
    wishedPieces: count,
    pours:
      pieces === undefined || cavities === undefined
        ? undefined
        : fillings(pieces.value, cavities * (moulds ?? 1)),
  };
}

function fillings(pieces: number, cavities: number): PlannedYield['pours'] {
  return { full: Math.floor(pieces / cavities), rest: pieces % cavities, cavities };
}

function whole(pieces: number): number {
  return Math.max(0, Math.floor(pieces + SAME_PIECE));
}
