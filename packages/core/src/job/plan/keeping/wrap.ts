import { joinBands } from '../../../foundation/results/band.js';
import { isNone } from '../../../foundation/results/is-none.js';
import type { Mixture } from '../../../matter/mixture/types.js';
import { PIECE_DOMAIN_G, wrapLife } from '../../../models/moisture/index.js';
import type { BatchDocument } from '../../batch/types.js';
import { type Ledger, leaveOut, take, warn } from '../../ledger.js';
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
    leaveOut(ledger, '/wrap', wrap);
    return { kind: 'none', reason: 'not-given' };
  }
  if (typeof wrap === 'string') return { kind: 'none', reason: 'open' };
  const { relativeHumidity, storeC } = store;
  if (relativeHumidity === undefined) return { kind: 'none', reason: 'humidity-not-given' };
  if (pieceG === undefined) return { kind: 'none', reason: 'piece-not-given' };
  const { film, areaCm2 } = wrap;
  const seal = take(ledger, '/wrap/sealFactor', wrap.sealFactor, USUAL_SEAL);
  const packed = { pieceG: Math.max(PIECE_DOMAIN_G[0], pieceG), film, areaCm2, storeC };
  const lifeWith = (sealFactor: number) =>
    wrapLife(finished, { ...packed, relativeHumidity, sealFactor });
  const life = lifeWith(seal);
  if (isNone(life)) return { kind: 'none', reason: REASONS[life.reason] };
  warn(ledger, life.warnings);
  // A seal that is taken for granted is as wide as seals are.
  const [tight, leaky] =
    wrap.sealFactor === undefined ? [USUAL_SEAL.low, USUAL_SEAL.high] : [seal, seal];
  const daysWith = (sealFactor: number) => {
    const other = lifeWith(sealFactor);
    return isNone(other) ? life.days : other.days;
  };
  return {
    kind: 'days',
    days: figure(
      life.days,
      joinBands(life.days, life.band, [daysWith(leaky), daysWith(tight)]),
      'wrap-life',
    ),
    fullDays: life.daysFull,
  };
}

/** Why there are no days, as the plan says it. */
const REASONS = {
  'never-reaches': 'dry-enough',
  'already-soft': 'already-soft',
  open: 'open',
  'no-estimate': 'no-estimate',
  'no-sorption-data': 'no-estimate',
  'nothing-dissolved': 'no-estimate',
} as const;
