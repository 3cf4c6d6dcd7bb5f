import type { Span } from './types.js';

/**
 * Adds independent bands about one value: root-sum-square, low and high ends apart.
 *
 * @param value - The middle all the bands belong to.
 * @param bands - One band for each thing that may be wrong, in the unit of the value.
 * @returns the joint band, in the same unit.
 */
export function joinBands(value: number, ...bands: readonly Span[]): Span {
  let below = 0;
  let above = 0;
  for (const [low, high] of bands) {
    below += Math.min(low - value, 0) ** 2;
    above += Math.max(high - value, 0) ** 2;
  }
  return [value - Math.sqrt(below), value + Math.sqrt(above)];
}

/** The band of a value nothing is known to be wrong with. */
export function exactly(value: number): Span {
  return [value, value];
}

/** The band that reaches as far below a value as above it. */
export function around(value: number, plusMinus: number): Span {
  return [value - plusMinus, value + plusMinus];
}
