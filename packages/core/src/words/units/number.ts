import type { DisplayOptions } from '../types.js';

/**
 * A number for people.
 *
 * Thousands stand apart by a space and a minus is a minus sign; with a locale its own customs hold.
 *
 * @param value - Any finite number.
 * @param decimals - Digits after the point.
 * @param keepZeros - Whether `5.0` keeps its nought.
 */
export function formatNumber(
  value: number,
  decimals: number,
  options: DisplayOptions = {},
  keepZeros = false,
): string {
  const minimumFractionDigits = keepZeros ? decimals : 0;
  if (options.locale !== undefined) {
    return new Intl.NumberFormat(options.locale, {
      minimumFractionDigits,
      maximumFractionDigits: decimals,
    }).format(roundTo(value, decimals));
  }
  const fixed = Math.abs(roundTo(value, decimals)).toFixed(decimals);
  const [whole = '', part = ''] = fixed.split('.');
  const shownPart = keepZeros ? part : part.replace(/0+$/, '');
  const grouped = whole.replace(/\B(?=(\d{3})+$)/g, ' ');
  const sign = roundTo(value, decimals) < 0 ? '−' : '';
  return `${sign}${grouped}${shownPart === '' ? '' : `.${shownPart}`}`;
}

/** Rounds half away from zero, undisturbed by the last binary digit of `1.005`. */
export function roundTo(value: number, decimals: number): number {
  const factor = 10 ** decimals;
  const scaled = Math.round(Math.abs(value) * factor * (1 + Number.EPSILON)) / factor;
  return value < 0 && scaled !== 0 ? -scaled : scaled;
}

/** `four` rather than `4`, up to twelve; a number in figures otherwise. */
export function countInWords(count: number, options: DisplayOptions = {}): string {
  const words = [
    'no',
    'one',
    'two',
    'three',
    'four',
    'five',
    'six',
    'seven',
    'eight',
    'nine',
    'ten',
    'eleven',
    'twelve',
  ];
  return words[count] ?? formatNumber(count, 0, options);
}
