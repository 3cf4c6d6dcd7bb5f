import { isNone } from '../../foundation/results/is-none.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { RELATIVE_HUMIDITY_DOMAIN } from './constants.js';
import { type NoSorption, sorptionOf, waterAt } from './sorption.js';

/** What `waterAtRelativeHumidity` answers. */
export type EquilibriumWater = Checked<{
  /** Water in the whole sweet, 0 to 1. */
  moistureMassFraction: number;
  /** Water on 100 g of the solids that are in solution, g. */
  waterGPer100GSolids: number;
  /** Of `moistureMassFraction`: within this about nine times in ten. */
  band: Span;
}>;

/**
 * How much water a sweet ends up with if it lies in this air for good.
 *
 * The skin gets there in hours, the heart of a piece in weeks. The other way round than
 * `equilibriumRelativeHumidity`, with the same isotherms and the same gaps; only the ratio of the
 * solids counts.
 *
 * @equation m = Σ xᵢ·mᵢ(aw)
 * @param mixture - The sweet, with any amount of water.
 * @param options - `relativeHumidity`: of the air, 0 to 1. `temperatureC`: °C, −40 to 60; nothing is
 *   known below 0.
 * @returns `moistureMassFraction` of the whole, `waterGPer100GSolids`, endless at 1, and the `band`
 *   of the first, with a warning outside 15 to 35 °C. Or `none`: `no-sorption-data`, `nothing-dissolved`.
 * @throws {@link ModelRangeError} outside the humidities or the temperatures.
 * @example
 * const sweet = solutionOf('sucrose', { drySolidsMassFraction: 0.98 });
 * waterAtRelativeHumidity(sweet, { relativeHumidity: 0.5, temperatureC: 25 }) // { moistureMassFraction: 0.1140… }
 * @source sorption-fit, zobrist-2011, sloan-labuza-1975, bronlund-paterson-2004, boiling-fit
 */
export function waterAtRelativeHumidity(
  mixture: Mixture,
  {
    relativeHumidity,
    temperatureC,
  }: { readonly relativeHumidity: number; readonly temperatureC: number },
): EquilibriumWater | NoSorption {
  requireWithin('relativeHumidity', relativeHumidity, RELATIVE_HUMIDITY_DOMAIN);
  const sorption = sorptionOf(mixture, temperatureC);
  if (isNone(sorption)) return sorption;
  const waterGPerG = waterAt(sorption, relativeHumidity);
  const moisture = (gPerG: number): number => moistureOf(mixture, sorption.dissolvedG * gPerG);
  return {
    moistureMassFraction: moisture(waterGPerG),
    waterGPer100GSolids: 100 * waterGPerG,
    band: [
      moisture(waterGPerG * (1 - sorption.plusMinus)),
      moisture(waterGPerG * (1 + sorption.plusMinus)),
    ],
    warnings: sorption.warnings,
  };
}

/** Share of water in the whole, if the sweet held so much of it. */
export function moistureOf({ massG, waterG }: Mixture, heldG: number): number {
  // Written so that endless water is a share of 1, and none of 0.
  return 1 / (1 + (massG - waterG) / heldG);
}
