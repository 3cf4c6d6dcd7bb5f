import { isNone } from '../../../foundation/results/is-none.js';
import type { Mixture } from '../../../matter/mixture/types.js';
import { wrapLife } from '../../../models/moisture/index.js';
import type { BatchDocument } from '../../batch/types.js';
import { assume, type Ledger, take, warn } from '../../ledger.js';
import { figure } from '../figure.js';
import type { Store } from '../keeping.js';
import type { PlannedWrap } from '../types.js';

/** Seals let through as much again as the film, when nobody says: common practice 1.1 to 3. */
export const USUAL_SEAL = {
  value: 1.5,
  low: 1.1,
  high: 3,
  source: 'common-practice',
  grade: 'practice',
} as const;

/** A piece nobody weighed has no wrap to be judged. */
export function planWrap(
  {
    batch,
    finished,
    store,
    pieceG,
  }: {
    readonly batch: BatchDocument;
    readonly finished: Mixture;
    readonly store: Store;
    readonly pieceG: number | undefined;
  },
  ledger: Ledger,
): PlannedWrap {
  const { wrap } = batch;
  if (wrap === undefined) {
    assume(ledger, '/wrap', 'none');
    return { kind: 'none', reason: 'not-given' };
  }
  if (typeof wrap === 'string') return { kind: 'none', reason: 'open' };
  const { relativeHumidity, storeC } = store;
  if (relativeHumidity === undefined) return { kind: 'none', reason: 'humidity-not-given' };
  if (pieceG === undefined) return { kind: 'none', reason: 'no-estimate' };
  const sealFactor = take(ledger, '/wrap/sealFactor', wrap.sealFactor, USUAL_SEAL);
  const life = wrapLife(finished, {
    pieceG,
    film: wrap.film,
    areaCm2: wrap.areaCm2,
    sealFactor,
    storeC,
    relativeHumidity,
  });
  if (isNone(life)) {
    return {
      kind: 'none',
      reason:
        life.reason === 'never-reaches'
          ? 'dry-enough'
          : life.reason === 'already-soft'
            ? 'already-soft'
            : 'no-estimate',
    };
  }
  warn(ledger, life.warnings);
  return {
    kind: 'days',
    days: figure(life.days, life.band, 'wrap-life'),
    fullDays: life.daysFull,
  };
}
