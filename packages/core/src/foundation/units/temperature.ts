import { requireFinite } from './finite.js';

/** Kelvin at 0 °C, by definition of the Celsius scale. */
const ZERO_CELSIUS_IN_K = 273.15;
const ABSOLUTE_ZERO_IN_F = -459.67;

/**
 * A Celsius reading as an American recipe prints it.
 *
 * @param temperatureC - Temperature, °C. At least absolute zero.
 * @returns the temperature, °F.
 * @throws {@link ModelRangeError} if no temperature is that low, or for NaN.
 * @example
 * fahrenheitFromCelsius(150) // 302
 */
export function fahrenheitFromCelsius(temperatureC: number): number {
  requireFinite('temperatureC', temperatureC, -ZERO_CELSIUS_IN_K);
  return temperatureC * 1.8 + 32;
}

/**
 * A Fahrenheit reading in Celsius.
 *
 * @param temperatureF - Temperature, °F. At least absolute zero.
 * @returns the temperature, °C.
 * @throws {@link ModelRangeError} if no temperature is that low, or for NaN.
 * @example
 * celsiusFromFahrenheit(302) // 150
 */
export function celsiusFromFahrenheit(temperatureF: number): number {
  requireFinite('temperatureF', temperatureF, ABSOLUTE_ZERO_IN_F);
  return (temperatureF - 32) / 1.8;
}

/**
 * A Celsius temperature on the scale equations use.
 *
 * @param temperatureC - Temperature, °C. At least absolute zero.
 * @returns the temperature, K.
 * @throws {@link ModelRangeError} if no temperature is that low, or for NaN.
 * @example
 * kelvinFromCelsius(25) // 298.15
 */
export function kelvinFromCelsius(temperatureC: number): number {
  requireFinite('temperatureC', temperatureC, -ZERO_CELSIUS_IN_K);
  return temperatureC + ZERO_CELSIUS_IN_K;
}

/**
 * An absolute temperature on the scale cooks use.
 *
 * @param temperatureK - Absolute temperature, K. At least 0.
 * @returns the temperature, °C.
 * @throws {@link ModelRangeError} if it is below 0, or for NaN.
 * @example
 * celsiusFromKelvin(298.15) // 25
 */
export function celsiusFromKelvin(temperatureK: number): number {
  requireFinite('temperatureK', temperatureK, 0);
  return temperatureK - ZERO_CELSIUS_IN_K;
}

/**
 * A difference of temperatures as an American recipe prints it: no 32 is added.
 *
 * @param differenceK - Difference, K (the same as °C). Any finite number.
 * @returns the difference, °F.
 * @throws {@link ModelRangeError} for NaN.
 * @example
 * fahrenheitDifferenceFromKelvin(-5) // -9
 */
export function fahrenheitDifferenceFromKelvin(differenceK: number): number {
  requireFinite('differenceK', differenceK);
  return differenceK * 1.8;
}

/**
 * A difference of temperatures in Fahrenheit degrees, in kelvin: no 32 is taken off.
 *
 * @param differenceF - Difference, °F. Any finite number.
 * @returns the difference, K (the same as °C).
 * @throws {@link ModelRangeError} for NaN.
 * @example
 * kelvinDifferenceFromFahrenheit(-9) // -5
 */
export function kelvinDifferenceFromFahrenheit(differenceF: number): number {
  requireFinite('differenceF', differenceF);
  return differenceF / 1.8;
}
