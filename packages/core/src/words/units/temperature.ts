import type { DisplayOptions } from '../types.js';
import { formatNumber, roundTo } from './number.js';

/** A temperature twice: in the unit of the reader, then in the other. */
export type TemperaturePair = readonly [first: string, second: string];

/**
 * A temperature in both units, the reader's own first.
 *
 * The second is made from the first as shown, so that a cook who checks one against the other finds
 * them the same.
 *
 * @param temperatureC - °C.
 * @param options - Units and locale; `decimals` 1 where the window is narrow.
 * @returns for example `143 °C · 289 °F`.
 * @example
 * formatTemperature(143.1) // '143 °C · 289 °F'
 */
export function formatTemperature(
  temperatureC: number,
  options: DisplayOptions & { readonly decimals?: 0 | 1 | undefined } = {},
): string {
  return temperaturePair(temperatureC, options.decimals ?? 0, options).join(' · ');
}

/** The two halves of {@link formatTemperature}. */
export function temperaturePair(
  temperatureC: number,
  decimals: 0 | 1,
  options: DisplayOptions = {},
): TemperaturePair {
  const own = roundTo(inUnit(temperatureC, options), decimals);
  const fahrenheit = options.units === 'us' ? own : own * 1.8 + 32;
  const celsius = options.units === 'us' ? (own - 32) / 1.8 : own;
  const f = `${formatNumber(fahrenheit, decimals, options)} °F`;
  const c = `${formatNumber(celsius, decimals, options)} °C`;
  return options.units === 'us' ? [f, c] : [c, f];
}

/** The bare number on the reader's scale. */
export function formatReading(
  temperatureC: number,
  decimals: 0 | 1,
  options: DisplayOptions = {},
): string {
  return formatNumber(inUnit(temperatureC, options), decimals, options);
}

/** °C, or °F for a reader who wants that. */
export function inUnit(temperatureC: number, options: DisplayOptions): number {
  return options.units === 'us' ? temperatureC * 1.8 + 32 : temperatureC;
}

/**
 * A difference of temperatures: `5 °C`, or `9 °F`. Nothing is added to it, ever.
 *
 * @param differenceK - K.
 */
export function formatDifference(differenceK: number, options: DisplayOptions = {}): string {
  const us = options.units === 'us';
  const own = us ? differenceK * 1.8 : differenceK;
  return `${formatNumber(own, Math.abs(own) < 3 ? 1 : 0, options)} ${us ? '°F' : '°C'}`;
}
