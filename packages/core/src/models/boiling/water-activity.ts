import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { decomposition } from './boil.js';
import { DISSOLVED_DOMAIN, DISSOLVED_TESTED } from './constants.js';
import { lnWaterActivity } from './ln-water-activity.js';
import { dissolvedOf, soluteOf } from './solute.js';

/** Where the activity was seen to fall with every part of solids, °C. */
export const WATER_ACTIVITY_DOMAIN_C: Span = [0, 370];
/** Temperatures the model was held against, °C. */
export const WATER_ACTIVITY_TESTED_C: Span = [20, 200];

/**
 * How freely the water of a mass can leave it: 1 for plain water, less the drier the mass.
 *
 * For a syrup, a fondant or a boiling mass. In a finished glass of 1 to 4 % water it is a guide
 * only: there a measured sorption curve is the better tool.
 *
 * @equation see `boilingPoint`; aw at one temperature, without the boil
 * @param mixture - What is in the pan. Dissolved solids 0 to 0.99999 of solids and water.
 * @param options - `temperatureC`: °C, 0 to 370.
 * @returns `waterActivity`, 0 to 1, with warnings outside 0.995 dissolved or 20 to 200 °C, and for
 *   sucrose above 165 °C.
 * @throws {@link ModelRangeError} without water, or outside the temperatures.
 * @example
 * const syrup = solutionOf('sucrose', { drySolidsMassFraction: 0.67254 });
 * waterActivity(syrup, { temperatureC: 25 }).waterActivity // 0.8506
 * @source boiling-fit
 */
export function waterActivity(
  mixture: Mixture,
  { temperatureC }: { readonly temperatureC: number },
): Checked<{ waterActivity: number }> {
  const dissolvedMassFraction = dissolvedOf(mixture);
  requireWithin('dissolvedMassFraction', dissolvedMassFraction, DISSOLVED_DOMAIN);
  requireWithin('temperatureC', temperatureC, WATER_ACTIVITY_DOMAIN_C);
  const solute = soluteOf(mixture);
  return {
    waterActivity: Math.exp(lnWaterActivity(dissolvedMassFraction, temperatureC, solute)),
    warnings: [
      ...solute.warnings,
      ...warnOutside('dissolvedMassFraction', dissolvedMassFraction, DISSOLVED_TESTED),
      ...warnOutside('temperatureC', temperatureC, WATER_ACTIVITY_TESTED_C),
      ...decomposition(temperatureC, solute),
    ],
  };
}
