import { requireFinite } from './finite.js';

/** Pascal in one conventional millimetre of mercury: 13 595.1 kg/m³ × 9.80665 m/s² × 1 mm. */
const PA_PER_MM_HG = 133.322387415;
/** Millimetres in an inch, exact since 1959. */
const MM_PER_INCH = 25.4;

/**
 * The hectopascals of a weather report, in pascals.
 *
 * @param pressureHpa - Pressure, hPa (the same as mbar). At least 0.
 * @returns the pressure, Pa.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * paFromHpa(1_013.25) // 101 325
 */
export function paFromHpa(pressureHpa: number): number {
  requireFinite('pressureHpa', pressureHpa, 0);
  return pressureHpa * 100;
}

/**
 * A pressure as weather reports print it.
 *
 * @param pressurePa - Pressure, Pa. At least 0.
 * @returns the pressure, hPa (the same as mbar).
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * hpaFromPa(101_325) // 1013.25
 */
export function hpaFromPa(pressurePa: number): number {
  requireFinite('pressurePa', pressurePa, 0);
  return pressurePa / 100;
}

/**
 * Millimetres of mercury on an old barometer or a vacuum gauge, in pascals.
 *
 * Conventional millimetres: mercury at 0 °C under standard gravity.
 *
 * @param pressureMmHg - Pressure, mmHg. At least 0.
 * @returns the pressure, Pa.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * paFromMmHg(40) // 5332.9
 */
export function paFromMmHg(pressureMmHg: number): number {
  requireFinite('pressureMmHg', pressureMmHg, 0);
  return pressureMmHg * PA_PER_MM_HG;
}

/**
 * A pressure in millimetres of mercury.
 *
 * @param pressurePa - Pressure, Pa. At least 0.
 * @returns the pressure, mmHg.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * mmHgFromPa(101_325) // 760.000
 */
export function mmHgFromPa(pressurePa: number): number {
  requireFinite('pressurePa', pressurePa, 0);
  return pressurePa / PA_PER_MM_HG;
}

/**
 * Inches of mercury from an American weather report, in pascals.
 *
 * @param pressureInHg - Pressure, inHg. At least 0.
 * @returns the pressure, Pa.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * paFromInHg(29.92) // 101 320
 */
export function paFromInHg(pressureInHg: number): number {
  requireFinite('pressureInHg', pressureInHg, 0);
  return pressureInHg * MM_PER_INCH * PA_PER_MM_HG;
}

/**
 * A pressure in inches of mercury, as American weather reports print it.
 *
 * @param pressurePa - Pressure, Pa. At least 0.
 * @returns the pressure, inHg.
 * @throws {@link ModelRangeError} for NaN or less than nothing.
 * @example
 * inHgFromPa(101_325) // 29.9213
 */
export function inHgFromPa(pressurePa: number): number {
  requireFinite('pressurePa', pressurePa, 0);
  return pressurePa / (MM_PER_INCH * PA_PER_MM_HG);
}
