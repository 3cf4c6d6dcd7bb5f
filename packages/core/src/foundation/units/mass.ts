import { requireFinite } from './finite.js';

/** Grams in an avoirdupois pound, exact since 1959. */
const G_PER_LB = 453.59237;
const OZ_PER_LB = 16;

/**
 * Ounces on a scale, in grams. Not the fluid ounce, which is a volume.
 *
 * @param massOz - Mass, oz avoirdupois. Any finite number.
 * @returns the mass, g.
 * @throws {@link ModelRangeError} for NaN.
 * @example
 * gFromOz(1) // 28.3495
 */
export function gFromOz(massOz: number): number {
  requireFinite('massOz', massOz);
  return (massOz * G_PER_LB) / OZ_PER_LB;
}

/**
 * Grams in ounces.
 *
 * @param massG - Mass, g. Any finite number.
 * @returns the mass, oz avoirdupois.
 * @throws {@link ModelRangeError} for NaN.
 * @example
 * ozFromG(100) // 3.5274
 */
export function ozFromG(massG: number): number {
  requireFinite('massG', massG);
  return (massG * OZ_PER_LB) / G_PER_LB;
}

/**
 * Pounds in grams.
 *
 * @param massLb - Mass, lb. Any finite number.
 * @returns the mass, g.
 * @throws {@link ModelRangeError} for NaN.
 * @example
 * gFromLb(1) // 453.59237
 */
export function gFromLb(massLb: number): number {
  requireFinite('massLb', massLb);
  return massLb * G_PER_LB;
}

/**
 * Grams in pounds.
 *
 * @param massG - Mass, g. Any finite number.
 * @returns the mass, lb.
 * @throws {@link ModelRangeError} for NaN.
 * @example
 * lbFromG(1_000) // 2.20462
 */
export function lbFromG(massG: number): number {
  requireFinite('massG', massG);
  return massG / G_PER_LB;
}
