import { around } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { warnOutside } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilingPointAt } from './boiling-point.js';
import { BOIL_TESTED_C, BOIL_TESTED_PA } from './constants.js';
import { dissolvedAtBoil, type NoBoil } from './dry-solids-at-boil.js';
import { soluteOf } from './solute.js';

/** The model's own change of boiling point with pressure is known to about this share of it. */
export const COOK_TARGET_SHARE = {
  value: 0.1,
  source: 'boiling-spread',
  grade: 'derived',
} as const;

/** What `cookTarget` answers. */
export type CookTarget = Checked<{
  /** Where to stop under the other pressure, °C. */
  temperatureC: number;
  /** What to add to the temperature given, K; negative uphill. */
  shiftK: number;
  /** Of `temperatureC`, °C. */
  band: Span;
}>;

/**
 * Where to stop in another kitchen to cook a mass equally dry.
 *
 * Texture is set by the solids, and equal solids boil cooler under thinner air. The shift grows
 * with the temperature: a fifth more at hard crack than for plain water. Whatever the model errs
 * by at one pressure it errs by at the other, so the shift is known better than either boil.
 *
 * @param mixture - What is in the pan, with any amount of water.
 * @param options - `temperatureC`: the stop that is known to work, °C, 5 to 370. `fromPressurePa`,
 *   `toPressurePa`: where it works and where it is wanted, Pa, 873 to 21 000 000.
 * @returns `temperatureC`, °C, `shiftK`, K, and `band`, a tenth of the shift either way, °C. Or
 *   `none` with a reason, as for `drySolidsAtBoil`.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * const mass = solutionOf('sucrose', { drySolidsMassFraction: 0.5 });
 * cookTarget(mass, { temperatureC: 148, fromPressurePa: 101_325, toPressurePa: 84_556 })
 * // { temperatureC: 142.03…, shiftK: -5.96… }
 * @source boiling-fit
 */
export function cookTarget(
  mixture: Mixture,
  {
    temperatureC,
    fromPressurePa,
    toPressurePa,
  }: {
    readonly temperatureC: number;
    readonly fromPressurePa: number;
    readonly toPressurePa: number;
  },
): CookTarget | NoBoil {
  const solute = soluteOf(mixture);
  const dissolved = dissolvedAtBoil(solute, temperatureC, fromPressurePa);
  if (typeof dissolved === 'string') return { kind: 'none', reason: dissolved };
  const there = boilingPointAt(dissolved, solute, toPressurePa);
  const shiftK = there.boilingPointC - temperatureC;
  const plusMinusK = Math.abs(shiftK) * COOK_TARGET_SHARE.value;
  return {
    temperatureC: there.boilingPointC,
    shiftK,
    band: around(there.boilingPointC, plusMinusK),
    warnings: [
      ...there.warnings,
      ...warnOutside('fromTemperatureC', temperatureC, BOIL_TESTED_C),
      ...warnOutside('fromPressurePa', fromPressurePa, BOIL_TESTED_PA),
    ],
  };
}
