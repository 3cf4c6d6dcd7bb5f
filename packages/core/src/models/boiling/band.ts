import { interpolate } from '../../foundation/numeric/interpolate.js';
import type { Solute } from './solute.js';

/**
 * What a boiling point may be wrong by, K, at a dissolved mass fraction: the spread of what is in
 * print, drawn with a ruler between the middles of its steps (under 60 % 0.5 K; 60 to 70, 1.5; 70
 * to 85, 3.5; 85 to 92, 5.5; above, 6).
 */
export const BOILING_SPREAD = {
  source: 'boiling-spread',
  grade: 'derived',
  points: [
    [0, 0.5],
    [0.3, 0.5],
    [0.65, 1.5],
    [0.775, 3.5],
    [0.885, 5.5],
    [0.96, 6],
    [1, 6],
  ],
} as const;

/** No polyol was ever measured above 100 °C: a mass of nothing else errs by a third more, 8 K. */
export const POLYOL_SPREAD = { value: 1.333, source: 'assumption', grade: 'assumed' } as const;

/**
 * Half the width of the band of a boiling point, K.
 *
 * @param interactionK - What the uncertainty of the interactions alone moves it by, K.
 */
export function bandPlusMinusK(
  dissolvedMassFraction: number,
  solute: Solute,
  interactionK: number,
): number {
  const widening = 1 + solute.polyolShare * (POLYOL_SPREAD.value - 1);
  const spread = interpolate(BOILING_SPREAD.points, dissolvedMassFraction) * widening;
  return Math.hypot(spread, interactionK);
}
