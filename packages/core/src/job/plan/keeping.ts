import type { Span } from '../../foundation/results/types.js';
import type { Mixture } from '../../matter/mixture/types.js';
import type { BatchDocument } from '../batch/types.js';
import { assume, type Ledger, leaveOut, take } from '../ledger.js';
import { figure } from './figure.js';
import { planAir } from './keeping/air.js';
import { planWrap } from './keeping/wrap.js';
import type { PlannedKeeping } from './types.js';

/** A usual kitchen and a usual wish, when the cook says nothing. */
export const KEEPING_DEFAULTS = {
  roomC: { value: 22, low: 18, high: 26, source: 'common-practice', grade: 'practice' },
  forDays: { value: 180, source: 'common-practice', grade: 'practice' },
} as const;

/** Where the sweets wait: the store, or else the room. */
export type Store = {
  readonly storeC: number;
  readonly relativeHumidity: number | undefined;
  readonly forDays: number;
};

/** Reads store and room, and writes down what stands in for them. */
export function readStore(batch: BatchDocument, ledger: Ledger): Store {
  const { store, room } = batch;
  const roomC = take(ledger, '/room/temperatureC', room?.temperatureC, KEEPING_DEFAULTS.roomC);
  leaveOut(ledger, '/room/relativeHumidity', room?.relativeHumidity);
  const relativeHumidity = store?.relativeHumidity ?? room?.relativeHumidity;
  if (store?.relativeHumidity === undefined) {
    assume(ledger, '/store/relativeHumidity', relativeHumidity ?? 'unknown');
  }
  return {
    storeC: take(ledger, '/store/temperatureC', store?.temperatureC, {
      value: roomC,
      grade: 'assumed',
    }),
    relativeHumidity,
    forDays: take(ledger, '/store/forDays', store?.forDays, KEEPING_DEFAULTS.forDays),
  };
}

/** What the keeping of a plan is told from. */
export type KeepingQuestion = {
  readonly batch: BatchDocument;
  readonly store: Store;
  readonly finished: Mixture;
  readonly pieceG: number | undefined;
  readonly glassTransitionC: number;
  readonly band: Span;
};

/**
 * Whether it stays hard, what air it bears, and how long its wrap holds. The margin is judged with
 * the glass model's own band: the water has its own line.
 */
export function planKeeping(question: KeepingQuestion, ledger: Ledger): PlannedKeeping {
  const { batch, store, finished, pieceG, glassTransitionC, band } = question;
  const { storeC, relativeHumidity, forDays } = store;
  return {
    glassTransitionC: figure(glassTransitionC, band, 'glass'),
    storeC,
    storeRelativeHumidity: relativeHumidity,
    forDays,
    marginK: figure(glassTransitionC - storeC, [band[0] - storeC, band[1] - storeC], 'glass'),
    air: planAir(finished, storeC, ledger),
    wrap: planWrap({ batch, finished, store, pieceG }, ledger),
  };
}
