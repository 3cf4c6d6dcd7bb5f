import { requireFinite } from './finite.js';

/** Metres in a foot, exact since 1959. */
const M_PER_FOOT = 0.3048;

/**
 * Feet above the sea, in metres.
 *
 * @param lengthFt - Length or height, ft. Any finite number.
 * @returns the length, m.
 * @throws {@link ModelRangeError} for NaN.
 * @example
 * metresFromFeet(5_280) // 1609.344
 */
export function metresFromFeet(lengthFt: number): number {
  requireFinite('lengthFt', lengthFt);
  return lengthFt * M_PER_FOOT;
}

/**
 * Metres above the sea, in feet.
 *
 * @param lengthM - Length or height, m. Any finite number.
 * @returns the length, ft.
 * @throws {@link ModelRangeError} for NaN.
 * @example
 * feetFromMetres(1_609.344) // 5280.0
 */
export function feetFromMetres(lengthM: number): number {
  requireFinite('lengthM', lengthM);
  return lengthM / M_PER_FOOT;
}
