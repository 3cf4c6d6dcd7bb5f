import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import {
  BROWNING_ENERGY_KJ_PER_MOL,
  THERMAL_LOAD_CONSTANTS,
  THERMAL_LOAD_DOMAIN_C,
  THERMAL_LOAD_DOMAIN_S,
  THERMAL_LOAD_TESTED_C,
} from './constants.js';

/** A moment of a boil or of a rest; what else it says is passed over. */
export type WarmPoint = { readonly timeS: number; readonly temperatureC: number };

/** Kelvin, inside the equation only. */
const ZERO_C_IN_K = 273.15;
/** A stretch is cut where it warms by more than this. */
const STEP_K = 4;

/**
 * How much browning heat a boil is, as minutes at 150 °C: to compare two boils, nothing else.
 *
 * A minute at 130 °C counts about a fifth of one at 150 °C. No published constant turns the figure
 * into a colour of candy, and there is no safe amount: show it only as a ratio of two plans. Sugar
 * browns after a lag, so nothing may be seen for long, and then much. Acid, ash, protein and iron
 * change it and are left out.
 *
 * @equation L = ∫ exp(−(Ea/R)·(1/T − 1/423.15)) dt
 * @param path - `timeS` and `temperatureC` of points in order, joined by straight lines; up to a
 *   day, 0 to 220 °C. One point alone is no time at all.
 * @param options - `reducing`: much glucose, fructose or milk in it; no by default.
 * @returns `minutesAt150C`, min, and `band`: what the lowest and the highest activation energy in
 *   print make of the same boil; a warning where the hottest
 *   moment lies outside 60 to 160 °C.
 * @throws {@link ModelRangeError} outside the domains, or for a path that is empty or runs back.
 * @example
 * thermalLoad([
 *   { timeS: 0, temperatureC: 130 },
 *   { timeS: 60, temperatureC: 130 },
 * ]).minutesAt150C // 0.184 min
 * @source browning-energy-choice
 */
export function thermalLoad(
  path: readonly WarmPoint[],
  { reducing = false }: { readonly reducing?: boolean | undefined } = {},
): Checked<{ minutesAt150C: number; band: Span }> {
  requirePath(path);
  const { value, low, high } = BROWNING_ENERGY_KJ_PER_MOL[reducing ? 'reducing' : 'sugar'];
  const minutesAt150C = minutes(path, value);
  const [a, b] = [minutes(path, low), minutes(path, high)];
  const hottestC = path.reduce((most, { temperatureC }) => Math.max(most, temperatureC), 0);
  return {
    minutesAt150C,
    // Over 150 °C a higher energy counts more, below it less; a boil may cross.
    band: [Math.min(a, b, minutesAt150C), Math.max(a, b, minutesAt150C)],
    warnings: warnOutside('temperatureC', hottestC, THERMAL_LOAD_TESTED_C),
  };
}

/** Simpson's rule on pieces of a few kelvin. */
function minutes(path: readonly WarmPoint[], energyKJPerMol: number): number {
  const { referenceC, gasConstantJPerMolK } = THERMAL_LOAD_CONSTANTS;
  const energyK = (1_000 * energyKJPerMol) / gasConstantJPerMolK.value;
  const atReference = 1 / (referenceC.value + ZERO_C_IN_K);
  const speed = (temperatureC: number): number =>
    Math.exp(-energyK * (1 / (temperatureC + ZERO_C_IN_K) - atReference));
  let sumS = 0;
  for (let index = 1; index < path.length; index += 1) {
    const from = path[index - 1] as WarmPoint;
    const to = path[index] as WarmPoint;
    const riseK = to.temperatureC - from.temperatureC;
    const pieces = Math.max(1, Math.ceil(Math.abs(riseK) / STEP_K));
    const pieceS = (to.timeS - from.timeS) / pieces;
    for (let piece = 0; piece < pieces; piece += 1) {
      const at = (along: number): number =>
        speed(from.temperatureC + (riseK * (piece + along)) / pieces);
      sumS += (pieceS * (at(0) + 4 * at(0.5) + at(1))) / 6;
    }
  }
  return sumS / 60;
}

function requirePath(path: readonly WarmPoint[]): void {
  let lastS = Number.NEGATIVE_INFINITY;
  for (const { timeS, temperatureC } of path) {
    requireWithin('timeS', timeS, THERMAL_LOAD_DOMAIN_S);
    requireWithin('temperatureC', temperatureC, THERMAL_LOAD_DOMAIN_C);
    if (timeS < lastS) throw badPath('runs back in time', timeS);
    lastS = timeS;
  }
  if (path.length === 0) throw badPath('holds no point', 0);
}

function badPath(what: string, received: number): ModelRangeError {
  return new ModelRangeError(`The path ${what}; received ${received}.`, {
    code: 'outside-range',
    parameter: 'path',
    received,
  });
}
