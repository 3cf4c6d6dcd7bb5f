import type { Checked, None, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';

/** Air at the bottom of the deepest mine, and at the edge of space. */
export const AIR_PRESSURE_DOMAIN_PA: Span = [1, 200_000];
/** A gauge that reads more is no vacuum gauge. */
export const GAUGE_VACUUM_DOMAIN_PA: Span = [0, 200_000];

/**
 * Pressure inside a vacuum cooker from what its gauge reads.
 *
 * The gauge counts down from the air around it. In the hills there is less air to take away, so
 * the same reading is a deeper vacuum, and a reading of 720 mmHg cannot be had under 650 mmHg.
 *
 * @equation p = p_air − vacuum
 * @param cooker - `pressurePa`: the air around the cooker, Pa, 1 to 200 000. `underVacuumPa`: the
 *   reading of the gauge, Pa, 0 to 200 000.
 * @returns `pressurePa`, absolute, Pa; or `none` with `deeper-than-the-air`.
 * @throws {@link ModelRangeError} for a negative reading or an impossible pressure.
 * @example
 * absolutePressure({ pressurePa: 101_325, underVacuumPa: 95_992 }) // { pressurePa: 5333, warnings: [] }
 */
export function absolutePressure({
  pressurePa,
  underVacuumPa,
}: {
  readonly pressurePa: number;
  readonly underVacuumPa: number;
}): Checked<{ pressurePa: number }> | None<'deeper-than-the-air'> {
  requireWithin('pressurePa', pressurePa, AIR_PRESSURE_DOMAIN_PA);
  requireWithin('underVacuumPa', underVacuumPa, GAUGE_VACUUM_DOMAIN_PA);
  return underVacuumPa < pressurePa
    ? { pressurePa: pressurePa - underVacuumPa, warnings: [] }
    : { kind: 'none', reason: 'deeper-than-the-air' };
}
