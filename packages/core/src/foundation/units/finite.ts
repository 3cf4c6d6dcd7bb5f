import { requireWithin } from '../validity/check.js';

/**
 * Refuses what is not a finite number of at least `low`, before it is converted.
 *
 * @throws ModelRangeError if the value is NaN, endless or below the lowest that can be meant.
 */
export function requireFinite(
  parameter: string,
  value: number,
  low: number = -Number.MAX_VALUE,
): void {
  requireWithin(parameter, value, [low, Number.MAX_VALUE]);
}
