import { isNone } from '../../foundation/results/is-none.js';
import { applyChanges } from '../advice/apply-changes.js';
import type { Change, Remedy, RemedyCode } from '../advice/types.js';
import { readPieces } from '../batch/pieces.js';
import type { BatchDocument } from '../batch/types.js';
import { newLedger } from '../ledger.js';
import { invertedPots } from '../plan/cooking/invert.js';
import { planGraining } from '../plan/keeping/graining.js';
import { readStore } from '../plan/keeping.js';
import { readKitchen } from '../plan/kitchen.js';
import { finishedMixture, type WeighedLine } from '../plan/outcome.js';
import { weighBatch } from '../plan/weigh-batch.js';
import { sealedIn } from './sealed-in.js';
import { syrupInstead } from './syrup-instead.js';

/** A change of the document and the graining score it leaves. */
export type GrainingWay = { readonly remedy: Remedy; readonly score: number };

/** What every change is asked from. */
export type WaysQuestion = {
  readonly batch: BatchDocument;
  readonly lines: readonly WeighedLine[];
  /** Share of the sucrose that acid in the boil inverted. */
  readonly inverted: number;
};

/** Half a per cent less water is what a careful cook can hold. */
const DRIER_BY = 0.005;
/** A cool cupboard, °C, and a dry room, 0–1: common practice. */
const COOL_STORE_C = 18,
  DRY_ROOM = 0.35;

/**
 * Six changes of the document, each planned again as far as graining goes, the one that buys most
 * first: more doctor, no stirring, drier, cooler, in drier air, wrapped. Only those that buy something.
 */
export function grainingWays(question: WaysQuestion): readonly GrainingWay[] {
  const { batch } = question;
  const now = scoreOf(batch, question.inverted);
  if (now === undefined) return [];
  const candidates: readonly (readonly [
    RemedyCode,
    readonly Change[],
    Readonly<Record<string, number>>,
  ])[] = [
    ['add-glucose-syrup', syrupInstead(question), {}],
    [
      'do-not-stir',
      batch.handling?.stirredAfterBoil === true
        ? [{ path: '/handling/stirredAfterBoil', value: false }]
        : [],
      {},
    ],
    ...drier(batch, now.moisture),
    [
      'cooler-store',
      now.storeC > COOL_STORE_C ? [{ path: '/store/temperatureC', value: COOL_STORE_C }] : [],
      { storeC: COOL_STORE_C },
    ],
    [
      'drier-room',
      (now.relativeHumidity ?? 0) > DRY_ROOM
        ? [{ path: '/store/relativeHumidity', value: DRY_ROOM }]
        : [],
      { relativeHumidity: DRY_ROOM },
    ],
    ['wrap-it', batch.wrap === 'none' || batch.wrap === 'twist' ? [sealedIn(now.pieceG)] : [], {}],
  ];
  return candidates
    .filter(([, changes]) => changes.length > 0)
    .flatMap(([code, changes, numbers]): GrainingWay[] => {
      const after = scoreOf(applyChanges(batch, changes), question.inverted);
      return after === undefined || after.score >= now.score
        ? []
        : [{ remedy: { code, changes, numbers }, score: after.score }];
    })
    .sort((a, b) => a.score - b.score);
}

function drier(
  batch: BatchDocument,
  moisture: number,
): readonly (readonly [RemedyCode, readonly Change[], Readonly<Record<string, number>>])[] {
  const moistureMassFraction = moisture - DRIER_BY;
  if (moistureMassFraction < 2 * DRIER_BY) return [];
  const { underVacuumPa } = batch.cook;
  const value = {
    toMoistureMassFraction: moistureMassFraction,
    ...(underVacuumPa === undefined ? {} : { underVacuumPa }),
  };
  return [['cook-the-base-drier', [{ path: '/cook', value }], { moistureMassFraction }]];
}

/** The batch planned as far as graining goes. */
function scoreOf(
  batch: BatchDocument,
  inverted: number,
):
  | {
      readonly score: number;
      readonly moisture: number;
      readonly storeC: number;
      readonly relativeHumidity: number | undefined;
      readonly pieceG: number | undefined;
    }
  | undefined {
  const ledger = newLedger();
  const kitchen = readKitchen(batch, ledger);
  const wanted = readPieces(batch, ledger);
  const store = readStore(batch, ledger);
  const weighed = weighBatch(batch, kitchen, wanted, ledger);
  if (weighed === undefined || ledger.problems.length > 0) return undefined;
  const finished = finishedMixture(
    invertedPots(weighed.pots, inverted),
    weighed.stop.baseDrySolids,
  );
  const graining = planGraining({ batch, finished, store, stopC: weighed.stop.hereC });
  if (isNone(graining)) return undefined;
  return {
    score: graining[graining.worst]?.score ?? 0,
    moisture: finished.waterG / finished.massG,
    storeC: store.storeC,
    relativeHumidity: store.relativeHumidity,
    pieceG: wanted.piece?.value,
  };
}
