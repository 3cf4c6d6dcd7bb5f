import { isNone } from '../../foundation/results/is-none.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { humidityAt, type NoSorption, type Sorption, sorptionOf } from './sorption.js';

/** What `equilibriumRelativeHumidity` answers. */
export type EquilibriumHumidity = Checked<{
  /** 0 to 1. */
  relativeHumidity: number;
  /** Within this about nine times in ten, 0 to 1. */
  band: Span;
}>;

/**
 * The humidity of the air a sweet neither wets nor dries in.
 *
 * Drier air takes water from it, wetter air gives it water. It is a fact to show, never a threshold:
 * what a room is compared with is `criticalHumidity`. Printed figures for boiled sweets, 0.25 to 0.40,
 * are higher than what is computed at 2 to 3 % of water, because a meter reads the skin.
 *
 * Sucrose, lactose, sorbitol and glucose syrup solids have an isotherm of their own. Sucrose stands in
 * for the other sugars and for isomalt, syrup solids for polydextrose and inulin. Maltitol, xylitol,
 * erythritol, lactitol, mannitol, glycerol, hydrogenated syrups, acids and salts have none: up to a
 * tenth of the solids they count as sucrose, with a warning. Over 15 % of water the boiling model
 * answers; between, a join that never falls. The isotherms are of 25 °C; ten degrees change sucrose by
 * 0.001. Crystals and fat play no part.
 *
 * @equation Σ xᵢ·mᵢ(aw) = m, mᵢ = m₀·C·K·aw/((1 − K·aw)·(1 − K·aw + C·K·aw))
 * @param mixture - The sweet, with its water.
 * @param options - `temperatureC`: °C, −40 to 60; nothing is known below 0.
 * @returns `relativeHumidity` and its `band`, 0 to 1, with a warning outside 15 to 35 °C. Or `none`:
 *   `no-sorption-data` below freezing or where more than a tenth of the solids was never measured,
 *   `nothing-dissolved`.
 * @throws {@link ModelRangeError} outside the temperatures.
 * @example
 * const sweet = solutionOf('sucrose', { drySolidsMassFraction: 0.98 });
 * equilibriumRelativeHumidity(sweet, { temperatureC: 25 }) // { relativeHumidity: 0.1304… }
 * @source sorption-fit, zobrist-2011, sloan-labuza-1975, bronlund-paterson-2004, boiling-fit
 */
export function equilibriumRelativeHumidity(
  mixture: Mixture,
  { temperatureC }: { readonly temperatureC: number },
): EquilibriumHumidity | NoSorption {
  const sorption = sorptionOf(mixture, temperatureC);
  if (isNone(sorption)) return sorption;
  const waterGPerG = mixture.waterG / sorption.dissolvedG;
  return {
    relativeHumidity: humidityAt(sorption, waterGPerG),
    band: humidityBand(sorption, waterGPerG),
    warnings: sorption.warnings,
  };
}

/** The same if the isotherm holds less or more water than it says. */
export function humidityBand(sorption: Sorption, waterGPerG: number): Span {
  return [
    humidityAt(sorption, waterGPerG * (1 - sorption.plusMinus)),
    humidityAt(sorption, waterGPerG * (1 + sorption.plusMinus)),
  ];
}
