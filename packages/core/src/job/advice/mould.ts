import { scaleBatch } from './amounts.js';
import type { AdviceContext } from './context.js';
import { remedy } from './remedy.js';
import { ADVICE_THRESHOLDS } from './thresholds.js';
import type { Advice } from './types.js';

/** More pieces than cavities: the rest of the mass stiffens while the first fill sets. */
export function mouldsShort({ batch, yield: { pieces } }: AdviceContext): Advice | undefined {
  const { cavities, moulds } = batch.mould ?? {};
  if (cavities === undefined || moulds === undefined || pieces === undefined) return undefined;
  if (pieces.value <= cavities * moulds) return undefined;
  const needed = Math.ceil(pieces.value / cavities);
  return {
    code: 'moulds-short',
    severity: 'may-disappoint',
    path: '/mould/moulds',
    numbers: {
      pieces: pieces.value,
      cavities: cavities * moulds,
      fills: Math.ceil(pieces.value / (cavities * moulds)),
    },
    remedies: [
      remedy('more-moulds', [{ path: '/mould/moulds', value: needed }], { moulds: needed }),
    ],
  };
}

/** Fewer pieces than wished for. */
export function piecesShort(context: AdviceContext): Advice | undefined {
  const { pieces, wishedPieces } = context.yield;
  if (pieces === undefined || wishedPieces === undefined || pieces.value >= wishedPieces)
    return undefined;
  const nearly = pieces.value >= ADVICE_THRESHOLDS.piecesNearlyShare.value * wishedPieces;
  return {
    code: 'pieces-short',
    severity: nearly ? 'note' : 'may-disappoint',
    path: '/pieces/count',
    numbers: { pieces: pieces.value, wished: wishedPieces },
    remedies: [
      ...(pieces.value === 0
        ? []
        : [
            remedy('bigger-batch', scaleBatch(context, (wishedPieces + 1) / pieces.value), {
              times: wishedPieces / pieces.value,
            }),
          ]),
      ...(pieces.value === 0
        ? []
        : [
            remedy('fewer-pieces', [{ path: '/pieces/count', value: pieces.value }], {
              pieces: pieces.value,
            }),
          ]),
    ],
  };
}

/** A mass that still pours is hotter than this mould bears. */
export function targetAboveMould({
  pour: {
    mouldMaxC,
    pourBetweenC: [pourC],
  },
}: AdviceContext): Advice | undefined {
  if (mouldMaxC === undefined || pourC <= mouldMaxC) return undefined;
  return {
    code: 'target-above-mould',
    severity: 'danger',
    path: '/mould/maxC',
    numbers: { pourC, mouldMaxC },
    remedies: [
      remedy(
        'heat-proof-mould',
        [
          { path: '/mould/kind', value: 'silicone' },
          { path: '/mould/maxC', value: HEAT_PROOF_C },
        ],
        { mouldMaxC: HEAT_PROOF_C },
      ),
    ],
  };
}

/** Platinum silicone is sold for 200–230 °C: common practice. */
const HEAT_PROOF_C = 220;
