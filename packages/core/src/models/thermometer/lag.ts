import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';

/** A thermometer that settles exponentially is within 2 per cent after four time constants. */
export const LAG_CONSTANTS = {
  timeConstantsToRead: { value: 4, source: 'assumption', grade: 'assumed' },
} as const satisfies CitedConstants;

/** From infrared to an oven dial. */
export const READS_IN_DOMAIN_S: Span = [0, 600];
/** Cooling counts as a rise below zero. */
export const RISE_DOMAIN_K_PER_MIN: Span = [-200, 200];

/**
 * How far a thermometer runs behind a mass that is getting hotter.
 *
 * A slow dial in a fast boil shows hard ball when it is soft crack. Turn the heat down at the end,
 * or stop earlier by this much. It leaves out what the thermometer does when it is not covered.
 *
 * @equation behind = τ · dT/dt, τ = time to read / 4
 * @param input - `readsInS`: seconds until it has settled, 0 to 600; `riseKPerMin`: rise of the
 *   mass, −200 to 200 K a minute.
 * @returns `behindK`: the mass is this much hotter than the reading, K.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * thermometerLag({ readsInS: 90, riseKPerMin: 6 }).behindK // 2.25 K
 * @source assumption
 */
export function thermometerLag({
  readsInS,
  riseKPerMin,
}: {
  readonly readsInS: number;
  readonly riseKPerMin: number;
}): { readonly behindK: number } {
  requireWithin('readsInS', readsInS, READS_IN_DOMAIN_S);
  requireWithin('riseKPerMin', riseKPerMin, RISE_DOMAIN_K_PER_MIN);
  const timeConstantS = readsInS / LAG_CONSTANTS.timeConstantsToRead.value;
  return { behindK: (timeConstantS / 60) * riseKPerMin };
}
