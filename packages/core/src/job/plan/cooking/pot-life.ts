import type { BatchDocument } from '../../batch/types.js';
import { figure } from '../figure.js';
import type { Pots } from '../outcome.js';
import type { Stop } from '../stop.js';
import type { PlannedPour } from '../types.js';
import { panTimeConstantMin } from './moments.js';

/** A cavity takes about this long, and the change of moulds as long as several: common practice. */
export const FILLING = {
  cavityS: { value: 4, source: 'common-practice', grade: 'practice' },
  changeS: { value: 30, source: 'common-practice', grade: 'practice' },
} as const;

/** The pan cools twice as fast or half as fast as a lump of that size would: the estimate's own width. */
const EITHER_WAY = 1.5;

/** Minutes from the first pour until the mass no longer pours, and the fillings that fit into them. */
export function potLife(
  { pourBetweenC: [coolestC, hottestC] }: PlannedPour,
  cooling: {
    readonly batch: BatchDocument;
    readonly pots: Pots;
    readonly stop: Stop;
    readonly roomC: number;
  },
): Pick<PlannedPour, 'potLifeMin' | 'poursInTime'> {
  const { roomC, batch } = cooling;
  const tau = panTimeConstantMin(cooling);
  if (tau === undefined || coolestC <= roomC) return {};
  const minutes = tau * Math.log((hottestC - roomC) / (coolestC - roomC));
  const cavities = batch.mould?.cavities;
  const fillingS =
    cavities === undefined ? undefined : cavities * FILLING.cavityS.value + FILLING.changeS.value;
  return {
    potLifeMin: figure(minutes, [minutes / EITHER_WAY, minutes * EITHER_WAY], 'heat'),
    poursInTime: fillingS === undefined ? undefined : Math.floor((minutes * 60) / fillingS),
  };
}
