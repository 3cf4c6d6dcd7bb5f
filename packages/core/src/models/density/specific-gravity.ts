import { findRoot } from '../../foundation/numeric/find-root.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { DENSITY_TESTED_BRIX, sucroseKgPerM3 } from './sucrose-solution.js';
import { waterKgPerM3 } from './water-density.js';

/** Strengths an instrument can be asked about: none is read on a melt, °Bx. */
export const READING_DOMAIN_BRIX: Span = [0, 95];

/** Both weighed at this, °C. */
const AT_C = 20;

/**
 * How many times as heavy as water a sugar solution is, both at 20 °C.
 *
 * Some handbooks print a thousand times this under a heading of kg/m³; a density is 1.8 kg/m³ less.
 *
 * @equation SG = ρ(w, 20 °C) / ρ_water(20 °C)
 * @param brix - g sucrose per 100 g, 0 to 95.
 * @returns `specificGravity`, 20/20 °C, with a warning over 85 °Bx.
 * @throws {@link ModelRangeError} outside the domain.
 * @example
 * specificGravityFromBrix(65).specificGravity // 1.3189
 * @source icumsa-1994, kell-1975
 */
export function specificGravityFromBrix(brix: number): Checked<{ specificGravity: number }> {
  requireWithin('brix', brix, READING_DOMAIN_BRIX);
  return {
    specificGravity: gravityOf(brix),
    warnings: warnOutside('brix', brix, DENSITY_TESTED_BRIX),
  };
}

/**
 * Strength of a sugar solution from its specific gravity, a hydrometer's reading at 20 °C.
 *
 * @equation SG(w) = SG, solved for w
 * @param specificGravity - 20/20 °C, 1 to 1.519.
 * @returns `brix`, g sucrose per 100 g, with a warning over 85 °Bx.
 * @throws {@link ModelRangeError} outside what 0 to 95 °Bx give.
 * @example
 * brixFromSpecificGravity(1.3189).brix // 65.00 °Bx
 * @source icumsa-1994, kell-1975
 */
export function brixFromSpecificGravity(specificGravity: number): Checked<{ brix: number }> {
  const [thin, thick] = READING_DOMAIN_BRIX;
  requireWithin('specificGravity', specificGravity, [gravityOf(thin), gravityOf(thick)]);
  const brix = brixAtGravity(specificGravity);
  return { brix, warnings: warnOutside('brix', brix, DENSITY_TESTED_BRIX) };
}

/** The equation alone. */
export function gravityOf(brix: number): number {
  return sucroseKgPerM3(brix / 100, AT_C) / waterKgPerM3(AT_C);
}

/** The way back, for a gravity between those of the ends. */
export function brixAtGravity(specificGravity: number): number {
  return findRoot((brix) => gravityOf(brix) - specificGravity, READING_DOMAIN_BRIX);
}
