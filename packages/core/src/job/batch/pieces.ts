import { pieceMassFromCavity } from '../../models/density/index.js';
import { type Ledger, leaveOut, refuse, take } from '../ledger.js';
import { type Ranged, ranged } from '../plan/ranged.js';
import type { BatchDocument } from './types.js';

/** Film of mass left on the pan, g per litre it holds: common practice, and an estimate. */
export const PAN_FILM_G_PER_L = {
  value: 32,
  low: 25,
  high: 40,
  source: 'common-practice',
  grade: 'practice',
} as const;

/** Left on pan and tools when neither a pan nor a loss is given: common practice 2–5 %. */
export const LOSS_FRACTION = {
  value: 0.035,
  low: 0.02,
  high: 0.05,
  source: 'common-practice',
  grade: 'practice',
} as const;

/** Broken or misfilled when the cook says nothing: none is planned, up to 2 % is usual. */
export const BREAK_FRACTION = {
  value: 0,
  low: 0,
  high: 0.02,
  source: 'common-practice',
  grade: 'practice',
} as const;

/** What pieces are wanted and what is lost on the way to them. */
export type Wanted = {
  readonly piece?: Ranged | undefined;
  /** The piece was weighed, not worked out from a cavity. */
  readonly pieceIsGiven: boolean;
  readonly cavityMl?: number | undefined;
  readonly count?: number | undefined;
  readonly finishedMassG?: number | undefined;
  /** A share of the finished mass, or grams of film. */
  readonly loss: { readonly kind: 'share' | 'film'; readonly amount: Ranged };
  readonly breakage: Ranged;
};

/** Reads pieces, mould and losses together; two different cavity sizes are a problem. */
export function readPieces(batch: BatchDocument, ledger: Ledger): Wanted {
  const { pieces, mould } = batch;
  const cavityMl = pieces?.cavityMl ?? mould?.cavityMl;
  if (
    pieces?.cavityMl !== undefined &&
    mould?.cavityMl !== undefined &&
    pieces.cavityMl !== mould.cavityMl
  ) {
    refuse(ledger, {
      code: 'two-cavity-sizes',
      path: '/pieces/cavityMl',
      also: '/mould/cavityMl',
      received: pieces.cavityMl,
      numbers: { piecesCavityMl: pieces.cavityMl, mouldCavityMl: mould.cavityMl },
    });
  }
  leaveOut(ledger, '/mould/cavityMl', mould?.cavityMl);
  leaveOut(ledger, '/pieces/count', pieces?.count);
  if (pieces?.massG === undefined && cavityMl === undefined) {
    leaveOut(ledger, '/pieces/massG', undefined);
    if (pieces?.count !== undefined) {
      refuse(ledger, {
        code: 'piece-without-size',
        path: '/pieces',
        received: pieces.count,
        known: ['/pieces/massG', '/pieces/cavityMl', '/mould/cavityMl'],
      });
    }
  }
  return {
    piece: readPiece(pieces?.massG, cavityMl, ledger),
    pieceIsGiven: pieces?.massG !== undefined,
    cavityMl,
    count: pieces?.count,
    finishedMassG: pieces?.finishedMassG,
    loss: readLoss(batch, ledger),
    breakage: given(pieces?.breakFraction, '/pieces/breakFraction', BREAK_FRACTION, ledger),
  };
}

/** The finished mass that gives the wanted pieces, or nothing when no size is said. */
export function finishedMassWanted({
  finishedMassG,
  count,
  piece,
  loss,
  breakage,
}: Wanted): number | undefined {
  if (finishedMassG !== undefined) return finishedMassG;
  if (count === undefined || piece === undefined) return undefined;
  const whole = (count * piece.value) / (1 - breakage.value);
  return loss.kind === 'film' ? whole + loss.amount.value : whole / (1 - loss.amount.value);
}

/** What is left in whole pieces from a finished mass, g; never less than nothing. */
export function inPieces(
  finishedG: number,
  lost: number,
  kind: 'share' | 'film',
  broken: number,
): number {
  const poured = kind === 'film' ? finishedG - lost : finishedG * (1 - lost);
  return Math.max(poured, 0) * (1 - broken);
}

function readLoss(batch: BatchDocument, ledger: Ledger): Wanted['loss'] {
  const path = '/pieces/lossFraction';
  const share = batch.pieces?.lossFraction;
  const litres = (batch.pan?.capacityMl ?? 0) / 1_000;
  if (share !== undefined || litres === 0) {
    return { kind: 'share', amount: given(share, path, LOSS_FRACTION, ledger) };
  }
  const { value, low, high, grade } = PAN_FILM_G_PER_L;
  ledger.defaults.push({ path, value: 'film-of-the-pan', grade, low, high });
  return { kind: 'film', amount: ranged(value * litres, low * litres, high * litres) };
}

function readPiece(
  weighedG: number | undefined,
  cavityMl: number | undefined,
  ledger: Ledger,
): Ranged | undefined {
  if (weighedG !== undefined) return ranged(weighedG);
  if (cavityMl === undefined) return undefined;
  const { massG, band } = pieceMassFromCavity({ cavityMl });
  const piece = ranged(massG, ...band);
  take(ledger, '/pieces/massG', undefined, { ...piece, grade: 'practice' });
  return piece;
}

function given(
  value: number | undefined,
  path: string,
  fallback: Ranged & { readonly grade: 'practice' },
  ledger: Ledger,
): Ranged {
  const taken = take(ledger, path, value, fallback);
  return value === undefined ? fallback : ranged(taken);
}
