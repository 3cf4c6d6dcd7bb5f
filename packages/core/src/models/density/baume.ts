import type { Checked } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { brixAtGravity, gravityOf, READING_DOMAIN_BRIX } from './specific-gravity.js';
import { DENSITY_TESTED_BRIX } from './sucrose-solution.js';

/** The scale for liquids heavier than water. */
export const BAUME_CONSTANTS = {
  modulus: {
    value: 145,
    source: 'baume-modulus',
    grade: 'derived',
    note: '144.3 of an older scale misses the printed rows by 0.15 to 0.25',
  },
} as const satisfies CitedConstants;

/**
 * What a Baumé hydrometer shows in a sugar solution at 20 °C.
 *
 * Good to 0.05 degrees where tables print two decimals. Commercial Baumé of glucose syrup is another
 * scale: see `glucoseSyrupCommercialBaume`.
 *
 * @equation Bé = 145 − 145/SG
 * @param brix - g sucrose per 100 g, 0 to 95.
 * @returns `baume`, degrees, with a warning over 85 °Bx.
 * @throws {@link ModelRangeError} outside the domain.
 * @example
 * baumeFromBrix(60).baume // 32.50 °Bé
 * @source baume-modulus, icumsa-1994
 */
export function baumeFromBrix(brix: number): Checked<{ baume: number }> {
  requireWithin('brix', brix, READING_DOMAIN_BRIX);
  return {
    baume: baumeAtGravity(gravityOf(brix)),
    warnings: warnOutside('brix', brix, DENSITY_TESTED_BRIX),
  };
}

/**
 * Strength of a sugar solution from a Baumé hydrometer at 20 °C.
 *
 * Let the syrup cool: hot it reads lower, by about one degree for every 20 K.
 *
 * @equation SG = 145/(145 − Bé), then SG(w) = SG
 * @param baume - Degrees, 0 to about 49.5.
 * @returns `brix`, g sucrose per 100 g, with a warning over 85 °Bx.
 * @throws {@link ModelRangeError} outside what 0 to 95 °Bx give.
 * @example
 * brixFromBaume(32.5).brix // 59.99 °Bx
 * @source baume-modulus, icumsa-1994
 */
export function brixFromBaume(baume: number): Checked<{ brix: number }> {
  const [thin, thick] = READING_DOMAIN_BRIX;
  requireWithin('baume', baume, [
    baumeAtGravity(gravityOf(thin)),
    baumeAtGravity(gravityOf(thick)),
  ]);
  const brix = brixAtGravity(gravityAtBaume(baume));
  return { brix, warnings: warnOutside('brix', brix, DENSITY_TESTED_BRIX) };
}

/** Degrees of a specific gravity. */
export function baumeAtGravity(specificGravity: number): number {
  const { modulus } = BAUME_CONSTANTS;
  return modulus.value - modulus.value / specificGravity;
}

/** Specific gravity of degrees. */
export function gravityAtBaume(baume: number): number {
  const { modulus } = BAUME_CONSTANTS;
  return modulus.value / (modulus.value - baume);
}
