import type { Pedigree } from '../../foundation/numeric/pedigree.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';

/**
 * Coefficients of the vapour pressure of water, from the triple point to the critical point. All
 * of one page, so they share its pedigree.
 */
export const VAPOUR_PRESSURE_CONSTANTS = {
  source: 'wagner-pruss-1993',
  grade: 'secondary',
  criticalTemperatureK: 647.096,
  criticalPressurePa: 22_064_000,
  a: [-7.85951783, 1.84408259, -11.7866497, 22.6807411, -15.9618719, 1.80122502],
} as const satisfies Pedigree & Readonly<Record<string, unknown>>;

/** From the triple point to the critical point; the release was checked at both ends. */
export const VAPOUR_PRESSURE_DOMAIN_C: Span = [0.01, 373.946];

/**
 * Pressure at which water boils at a temperature.
 *
 * Also the pressure of the steam over it. Below the triple point there is ice, which this equation
 * knows nothing of.
 *
 * @equation ln(p/pc) = (Tc/T)·(a₁τ + a₂τ^1.5 + a₃τ³ + a₄τ^3.5 + a₅τ⁴ + a₆τ^7.5), τ = 1 − T/Tc
 * @param temperatureC - Temperature, °C. Domain 0.01 to 373.946.
 * @returns `vapourPressurePa`, Pa.
 * @throws {@link ModelRangeError} below the triple point or above the critical point.
 * @example
 * waterVapourPressure(100).vapourPressurePa // 101 418
 * @source wagner-pruss-1993
 */
export function waterVapourPressure(temperatureC: number): Checked<{ vapourPressurePa: number }> {
  requireWithin('temperatureC', temperatureC, VAPOUR_PRESSURE_DOMAIN_C);
  return { vapourPressurePa: vapourPressurePa(temperatureC), warnings: [] };
}

/** The same, Pa, for solvers that stay inside the domain by themselves. */
export function vapourPressurePa(temperatureC: number): number {
  const { criticalTemperatureK: Tc, criticalPressurePa: pc, a } = VAPOUR_PRESSURE_CONSTANTS;
  const T = temperatureC + 273.15;
  // At the critical point itself rounding can leave a trace below nought, which has no power 1.5.
  const tau = Math.max(0, 1 - T / Tc);
  const [a1, a2, a3, a4, a5, a6] = a;
  const sum =
    a1 * tau + a2 * tau ** 1.5 + a3 * tau ** 3 + a4 * tau ** 3.5 + a5 * tau ** 4 + a6 * tau ** 7.5;
  return pc * Math.exp((Tc / T) * sum);
}
