import { around } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { densityFromBrix } from './sucrose-solution.js';

/** A charge of any sugars, taken as sucrose at the upper end of what the polynomial was made for. */
export const CHARGE_CONSTANTS = {
  temperatureC: { value: 100, source: 'assumption', grade: 'assumed' },
  plusMinusGPerMl: { value: 0.03, source: 'assumption', grade: 'assumed' },
} as const satisfies CitedConstants;

/**
 * Density of what is in the pan at the first boil. An estimate, to see how full the pan is.
 *
 * All solids count as sucrose, and the temperature as 100 °C, where the polynomial for sugar
 * solutions ends; a first boil is a few degrees hotter and thinner by less than the band. Foam is
 * not counted and can treble the volume.
 *
 * @equation ρ = ρ_sucrose(100·s, 100 °C)
 * @param drySolidsMassFraction - Everything but water, 0 to 1.
 * @returns `densityGPerMl` and `band`, g/mL, with a warning over 0.85.
 * @throws {@link ModelRangeError} outside 0 to 1.
 * @example
 * chargeDensity(0.75).densityGPerMl // 1.33 g/mL
 * @source icumsa-1994
 */
export function chargeDensity(
  drySolidsMassFraction: number,
): Checked<{ densityGPerMl: number; band: Span }> {
  requireWithin('drySolidsMassFraction', drySolidsMassFraction, [0, 1]);
  const { temperatureC, plusMinusGPerMl } = CHARGE_CONSTANTS;
  const { densityKgPerM3, warnings } = densityFromBrix({
    brix: 100 * drySolidsMassFraction,
    temperatureC: temperatureC.value,
  });
  const densityGPerMl = densityKgPerM3 / 1_000;
  return {
    densityGPerMl,
    band: around(densityGPerMl, plusMinusGPerMl.value),
    warnings,
  };
}
