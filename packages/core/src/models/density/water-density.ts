import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { polynomial } from './polynomial.js';

/** Water by temperature in °C, kg/m³: numerator, then the slope below. Source `kell-1975`, secondary. */
export const WATER_DENSITY_COEFFICIENTS = [
  999.83952, 16.952577, -7.9905127e-3, -46.241757e-6, 105.84601e-9, -281.03006e-12,
] as const;
const WATER_DENSITY_SLOPE = 16.887236e-3;

/** Temperatures it answers for, °C. */
export const DENSITY_DOMAIN_C: Span = [0, 150];
/** Temperatures it was fitted between, °C. */
export const DENSITY_TESTED_C: Span = [0, 100];

/**
 * Density of water.
 *
 * @equation ρ = (999.83952 + 16.952577·T − 0.0079905127·T² − … ) / (1 + 0.016887236·T)
 * @param temperatureC - °C, 0 to 150; above 100 under pressure.
 * @returns `densityKgPerM3`, kg/m³, with a warning over 100 °C.
 * @throws {@link ModelRangeError} outside the domain.
 * @example
 * waterDensity(20).densityKgPerM3 // 998.203 kg/m³
 * @source kell-1975
 */
export function waterDensity(temperatureC: number): Checked<{ densityKgPerM3: number }> {
  requireWithin('temperatureC', temperatureC, DENSITY_DOMAIN_C);
  return {
    densityKgPerM3: waterKgPerM3(temperatureC),
    warnings: warnOutside('temperatureC', temperatureC, DENSITY_TESTED_C),
  };
}

/** The equation alone. */
export function waterKgPerM3(temperatureC: number): number {
  return (
    polynomial(WATER_DENSITY_COEFFICIENTS, temperatureC) / (1 + WATER_DENSITY_SLOPE * temperatureC)
  );
}
