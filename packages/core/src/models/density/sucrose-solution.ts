import { findRoot } from '../../foundation/numeric/find-root.js';
import type { Checked, ModelWarning, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { polynomial } from './polynomial.js';
import { DENSITY_DOMAIN_C, DENSITY_TESTED_C, waterKgPerM3 } from './water-density.js';

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

/** Strengths the polynomial answers for, °Bx; beyond 85 it is run on. */
export const DENSITY_DOMAIN_BRIX: Span = [0, 100];
/** Strengths it was held against printed rows for, °Bx. */
export const DENSITY_TESTED_BRIX: Span = [0, 85];

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
  return {
    densityKgPerM3: sucroseKgPerM3(brix / 100, temperatureC),
    warnings: outsideTested(brix, temperatureC),
  };
}

/**
 * Strength of a sugar solution from what a measured volume of it weighs.
 *
 * It counts whatever is dissolved as sucrose; glucose syrup is about one part in a hundred denser.
 *
 * @equation ρ(w, T) = ρ, solved for w
 * @param input - `densityKgPerM3`, kg/m³: from that of water to that of the run-on polynomial at
 *   100 °Bx, at this temperature; `temperatureC`, °C, 0 to 150.
 * @returns `brix`, g sucrose per 100 g, with a warning over 85 °Bx or 100 °C.
 * @throws {@link ModelRangeError} outside those.
 * @example
 * brixFromDensity({ densityKgPerM3: 1_316.56, temperatureC: 20 }).brix // 65.00 °Bx
 * @source icumsa-1994, kell-1975
 */
export function brixFromDensity({
  densityKgPerM3,
  temperatureC,
}: {
  readonly densityKgPerM3: number;
  readonly temperatureC: number;
}): Checked<{ brix: number }> {
  requireWithin('temperatureC', temperatureC, DENSITY_DOMAIN_C);
  const [thin, thick] = DENSITY_DOMAIN_BRIX;
  const of = (brix: number): number => sucroseKgPerM3(brix / 100, temperatureC);
  requireWithin('densityKgPerM3', densityKgPerM3, [of(thin), of(thick)]);
  const brix = findRoot((strength) => of(strength) - densityKgPerM3, DENSITY_DOMAIN_BRIX);
  return { brix, warnings: outsideTested(brix, temperatureC) };
}

/** The equation alone. */
export function sucroseKgPerM3(w: number, temperatureC: number): number {
  const aboveWater = polynomial(
    SUCROSE_DENSITY_COEFFICIENTS.map((row) => w * polynomial(row, w)),
    (temperatureC - 20) / 100,
  );
  return waterKgPerM3(temperatureC) + aboveWater;
}

function outsideTested(brix: number, temperatureC: number): readonly ModelWarning[] {
  return [
    ...warnOutside('brix', brix, DENSITY_TESTED_BRIX),
    ...warnOutside('temperatureC', temperatureC, DENSITY_TESTED_C),
  ];
}
