import type { Checked } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import {
  INVERSION_CONSTANTS,
  INVERSION_DOMAIN_C,
  INVERSION_DOMAIN_PH,
  INVERSION_DOMAIN_WATER_G_PER_ML,
  INVERSION_TESTED_C,
} from './constants.js';

/** Kelvin, inside the equation only. */
const ZERO_C_IN_K = 273.15;

/**
 * How fast acid splits sugar: the share of what is left that is split in a minute.
 *
 * The rate grows tenfold for each pH unit and 10.5-fold from 120 to 150 °C. Printed rates, from
 * plain water at 27 °C to hydrochloric acid, are met within a third. Water counts in g per mL of
 * syrup; some print it in g per 100 mL, which gives rates a hundred times too big.
 *
 * @equation log₁₀ k = 16.91 + log₁₀ W − 5670/T − pH, k in 1/min, T in kelvin
 * @param at - `pH` of the water of the syrup, −2 to 14; `temperatureC`, 0 to 200 °C; `waterGPerMl`:
 *   g of water in a mL of syrup, 0 to 1.
 * @returns `ratePerMin`, 1/min, with a warning outside 23 to 105 °C.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * inversionRate({ pH: 3, temperatureC: 100, waterGPerMl: 0.4439 }).ratePerMin // 0.02303 1/min
 * @source vukov-1965
 */
export function inversionRate({
  pH,
  temperatureC,
  waterGPerMl,
}: {
  readonly pH: number;
  readonly temperatureC: number;
  readonly waterGPerMl: number;
}): Checked<{ ratePerMin: number }> {
  requireWithin('pH', pH, INVERSION_DOMAIN_PH);
  requireWithin('temperatureC', temperatureC, INVERSION_DOMAIN_C);
  requireWithin('waterGPerMl', waterGPerMl, INVERSION_DOMAIN_WATER_G_PER_ML);
  return {
    ratePerMin: bareRatePerMin(temperatureC) * waterGPerMl * 10 ** -pH,
    warnings: warnOutside('temperatureC', temperatureC, INVERSION_TESTED_C),
  };
}

/** The law at pH 0 in a gram of water per mL, 1/min: what only the temperature decides. */
export function bareRatePerMin(temperatureC: number): number {
  const { log10PerMin, slopeK } = INVERSION_CONSTANTS;
  return 10 ** (log10PerMin.value - slopeK.value / (temperatureC + ZERO_C_IN_K));
}
