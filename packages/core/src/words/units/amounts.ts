import type { DisplayOptions } from '../types.js';
import { formatNumber, roundTo } from './number.js';

const GRAMS_PER_OUNCE = 28.349523125;
const ML_PER_US_QUART = 946.352946;

/**
 * A mass in grams, with ounces beside it where the reader thinks in them.
 *
 * Whole grams from 10 g on, tenths below, hundredths below a tenth: a pinch is never nought.
 *
 * @param massG - g, 0 or more.
 * @returns for example `232 g`, `5.0 g`, `232 g (8.2 oz)`.
 * @example
 * formatMass(5.83) // '5.8 g'
 */
export function formatMass(massG: number, options: DisplayOptions = {}): string {
  const decimals = roundTo(massG, 1) >= 10 ? 0 : massG > 0 && roundTo(massG, 1) < 0.1 ? 2 : 1;
  const grams = `${formatNumber(massG, decimals, options, true)} g`;
  if (options.units !== 'us' || decimals > 0) return grams;
  const ounces = roundTo(massG / GRAMS_PER_OUNCE, 1);
  const pounds = Math.floor(ounces / 16);
  const rest = `${formatNumber(ounces - 16 * pounds, 1, options)} oz`;
  return `${grams} (${pounds > 0 ? `${formatNumber(pounds, 0, options)} lb ` : ''}${rest})`;
}

/** A mass with kilograms from 1 kg on, where no scale needs the last gram: animals, people. */
export function formatKilograms(massKg: number, options: DisplayOptions = {}): string {
  const pounds = formatNumber((massKg * 1000) / (16 * GRAMS_PER_OUNCE), 0, options);
  return `${formatNumber(massKg, massKg < 3 ? 1 : 0, options)} kg${options.units === 'us' ? ` (${pounds} lb)` : ''}`;
}

/**
 * A fraction as per cent: whole from 10 % on, tenths below.
 *
 * @param fraction - 0 to 1.
 * @returns for example `33 %`, `1.3 %`, `under 0.1 %`.
 * @example
 * formatFraction(0.333) // '33 %'
 */
export function formatFraction(fraction: number, options: DisplayOptions = {}): string {
  const percent = fraction * 100;
  if (percent > 0 && roundTo(percent, 1) < 0.1) return `under ${formatNumber(0.1, 1, options)} %`;
  return `${formatNumber(percent, Math.abs(percent) < 10 ? 1 : 0, options)} %`;
}

/**
 * Water in a sweet. Finer than a tenth of a per cent, or below half a per cent, nobody knows it.
 *
 * @param massFraction - 0 to 1.
 * @example
 * formatMoisture(0.0031) // 'under 0.5 %'
 */
export function formatMoisture(massFraction: number, options: DisplayOptions = {}): string {
  // Before rounding: 0.49 % is under half a per cent, however it would be printed.
  return massFraction < 0.005
    ? `under ${formatNumber(0.5, 1, options)} %`
    : `${formatNumber(massFraction * 100, 1, options)} %`;
}

/**
 * A pressure as a barometer shows it.
 *
 * @param pressurePa - Pa.
 * @returns for example `846 hPa`, or `24.97 inHg` with US units.
 * @example
 * formatPressure(84_556) // '846 hPa'
 */
export function formatPressure(pressurePa: number, options: DisplayOptions = {}): string {
  return options.units === 'us'
    ? `${formatNumber(pressurePa / 3386.389, 2, options, true)} inHg`
    : `${formatNumber(pressurePa / 100, 0, options)} hPa`;
}

/** A volume, with US quarts beside it where a pan is meant. */
export function formatVolume(volumeMl: number, options: DisplayOptions = {}): string {
  const ml = `${formatNumber(volumeMl, volumeMl < 10 ? 1 : 0, options)} ml`;
  return options.units === 'us' && volumeMl >= 400
    ? `${ml} (${formatNumber(volumeMl / ML_PER_US_QUART, 1, options)} qt)`
    : ml;
}

/** A length: millimetres, centimetres from 10 cm on, inches beside. */
export function formatLength(lengthMm: number, options: DisplayOptions = {}): string {
  const metric =
    lengthMm >= 100
      ? `${formatNumber(lengthMm / 10, 1, options)} cm`
      : `${formatNumber(lengthMm, 0, options)} mm`;
  return options.units === 'us'
    ? `${metric} (${formatNumber(lengthMm / 25.4, 1, options)} in)`
    : metric;
}
