import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';

/**
 * ICUMSA polynomial: kg/m³ above water, one row for each power of (T − 20)/100, one column for each
 * power of the sucrose mass fraction from the first. Source `icumsa-1994`, secondary.
 */
export const SUCROSE_DENSITY_COEFFICIENTS = [
  [385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289],
  [-46.272, -7.172, 1.1597, 5.1126, 17.5254],
  [59.7712, 7.2491, 12.363, -35.4791],
  [-47.2207, -21.6977, 27.6301],
  [18.3184, 12.3081],
] as const;

/** Water by temperature in °C, kg/m³: numerator, then the slope below. Source `kell-1975`, secondary. */
export const WATER_DENSITY_COEFFICIENTS = [
  999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12,
] as const;
const WATER_DENSITY_SLOPE = 16.887236e-3;

/** Strengths the polynomial answers for, °Bx; beyond 85 it is run on. */
export const DENSITY_DOMAIN_BRIX: Span = [0, 100];
/** Strengths it was held against printed rows for, °Bx. */
export const DENSITY_TESTED_BRIX: Span = [0, 85];
/** Temperatures it answers for, °C. */
export const DENSITY_DOMAIN_C: Span = [0, 150];
/** Temperatures it was fitted between, °C. */
export const DENSITY_TESTED_C: Span = [0, 100];

/**
 * Density of a sugar solution.
 *
 * Good to 1 kg/m³ at 20 °C up to 84 parts of sugar in a hundred, and usable to 100 °C. Beyond both
 * the polynomial runs on and the answer says so: dry and hot it gives an upper bound for candy.
 *
 * @equation ρ = ρ_water(T) + Σₖ τᵏ Σᵢ Aₖᵢ wⁱ, τ = (T − 20)/100
 * @param input - `brix`: g sucrose per 100 g, 0 to 100; `temperatureC`, °C, 0 to 150.
 * @returns `densityKgPerM3`, kg/m³, with a warning over 85 °Bx or 100 °C.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * densityFromBrix({ brix: 65, temperatureC: 20 }).densityKgPerM3 // 1316.56 kg/m³
 * @source icumsa-1994, kell-1975
 */
export function densityFromBrix({
  brix,
  temperatureC,
}: {
  readonly brix: number;
  readonly temperatureC: number;
}): Checked<{ densityKgPerM3: number }> {
  requireWithin('brix', brix, DENSITY_DOMAIN_BRIX);
  requireWithin('temperatureC', temperatureC, DENSITY_DOMAIN_C);
  const w = brix / 100;
  const tau = (temperatureC - 20) / 100;
  const aboveWater = polynomial(
    SUCROSE_DENSITY_COEFFICIENTS.map((row) => w * polynomial(row, w)),
    tau,
  );
  const water =
    polynomial(WATER_DENSITY_COEFFICIENTS, temperatureC) / (1 + WATER_DENSITY_SLOPE * temperatureC);
  return {
    densityKgPerM3: water + aboveWater,
    warnings: [
      ...warnOutside('brix', brix, DENSITY_TESTED_BRIX),
      ...warnOutside('temperatureC', temperatureC, DENSITY_TESTED_C),
    ],
  };
}

function polynomial(coefficients: readonly number[], x: number): number {
  return coefficients.reduceRight((sum, coefficient) => sum * x + coefficient, 0);
}
