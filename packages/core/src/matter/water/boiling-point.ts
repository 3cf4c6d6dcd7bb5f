import { findRoot } from '../../foundation/numeric/find-root.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { vapourPressurePa } from './vapour-pressure.js';

/** Pressures under which water boils between 5 and 370 °C. */
export const WATER_BOILING_DOMAIN_PA: Span = [873, 21_000_000];
/** Temperatures searched for a boiling point, of water and of sugar masses alike. */
export const BOILING_SEARCH_C: Span = [5, 370];

/**
 * Temperature at which plain water boils under a pressure.
 *
 * The pressure must be the one at the pan. A weather report gives it reduced to sea level, which
 * in the hills is 5 °C wrong: see `stationPressure`.
 *
 * @param pressurePa - Absolute pressure, Pa. Domain 873 to 21 000 000.
 * @returns `boilingPointC`, °C.
 * @throws {@link ModelRangeError} outside the domain.
 * @example
 * waterBoilingPoint(101_325).boilingPointC // 99.974
 * @source wagner-pruss-1993
 */
export function waterBoilingPoint(pressurePa: number): Checked<{ boilingPointC: number }> {
  requireWithin('pressurePa', pressurePa, WATER_BOILING_DOMAIN_PA);
  return {
    boilingPointC: boilingTemperatureC(BOILING_SEARCH_C, (temperatureC) =>
      Math.log(vapourPressurePa(temperatureC) / pressurePa),
    ),
    warnings: [],
  };
}

/**
 * Temperature at which a liquid begins to boil, °C.
 *
 * The logarithm of a vapour pressure is nearly straight in 1/T, so the search is made there and
 * needs half the steps.
 *
 * @param bracketC - Temperatures to search between, °C.
 * @param excess - Logarithm of the liquid's vapour pressure over the pressure at the pan.
 */
export function boilingTemperatureC(
  bracketC: Span,
  excess: (temperatureC: number) => number,
): number {
  const root = findRoot(
    (y) => excess(1 / y - 273.15),
    [1 / (bracketC[1] + 273.15), 1 / (bracketC[0] + 273.15)],
    { tolerance: 1e-16 },
  );
  return 1 / root - 273.15;
}
