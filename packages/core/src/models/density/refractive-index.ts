import { findRoot } from '../../foundation/numeric/find-root.js';
import { interpolate, type Point } from '../../foundation/numeric/interpolate.js';
import type { Pedigree } from '../../foundation/numeric/pedigree.js';
import type { Checked } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { polynomial } from './polynomial.js';
import { READING_DOMAIN_BRIX } from './specific-gravity.js';
import { DENSITY_TESTED_BRIX } from './sucrose-solution.js';

/** Refractive index by rising power of the sucrose mass fraction, 0 to 85 °Bx. */
export const REFRACTION_COEFFICIENTS = {
  source: 'refraction-fit',
  grade: 'derived',
  coefficients: [1.33298723, 0.14275328, 0.05474398, 0.01200009, 0.01340275, -0.00961397],
} as const satisfies Pedigree & { readonly coefficients: readonly number[] };

/** Printed beyond 85 °Bx, to four decimals. */
export const REFRACTION_POINTS = {
  source: 'icumsa-1974',
  grade: 'secondary',
  points: [
    [90, 1.5177],
    [95, 1.532],
  ],
} as const satisfies Pedigree & { readonly points: readonly [Point, Point] };

/**
 * How strongly a sugar solution bends light, at 20 °C and 589 nm.
 *
 * Within 0.000006 of the printed table to 85 °Bx; from there the table is run on to four decimals
 * and read in straight lines.
 *
 * @equation n = 1.33298723 + 0.14275328·w + 0.05474398·w² + 0.01200009·w³ + 0.01340275·w⁴ − 0.00961397·w⁵
 * @param brix - g sucrose per 100 g, 0 to 95.
 * @returns `refractiveIndex`, with a warning over 85 °Bx.
 * @throws {@link ModelRangeError} outside the domain.
 * @example
 * refractiveIndexFromBrix(65).refractiveIndex // 1.45348
 * @source refraction-fit, icumsa-1974
 */
export function refractiveIndexFromBrix(brix: number): Checked<{ refractiveIndex: number }> {
  requireWithin('brix', brix, READING_DOMAIN_BRIX);
  return {
    refractiveIndex: indexAt(brix),
    warnings: warnOutside('brix', brix, DENSITY_TESTED_BRIX),
  };
}

/**
 * What a sugar refractometer shows for a refractive index at 20 °C.
 *
 * It takes all that bends light for sucrose: glucose syrup reads too high, and above 85 °Bx or for
 * sugar alcohols it is no meter of solids.
 *
 * @equation n(w) = n, solved for w
 * @param refractiveIndex - 1.332987, which is water, to 1.532.
 * @returns `brix`, g sucrose per 100 g, with a warning over 85 °Bx.
 * @throws {@link ModelRangeError} outside what 0 to 95 °Bx give.
 * @example
 * brixFromRefractiveIndex(1.45348).brix // 65.00 °Bx
 * @source refraction-fit, icumsa-1974
 */
export function brixFromRefractiveIndex(refractiveIndex: number): Checked<{ brix: number }> {
  const [thin, thick] = READING_DOMAIN_BRIX;
  requireWithin('refractiveIndex', refractiveIndex, [indexAt(thin), indexAt(thick)]);
  const brix = brixAtIndex(refractiveIndex);
  return { brix, warnings: warnOutside('brix', brix, DENSITY_TESTED_BRIX) };
}

/** Fit and table alone; they meet at 85 °Bx. */
export function indexAt(brix: number): number {
  const { coefficients } = REFRACTION_COEFFICIENTS;
  const [, joint] = DENSITY_TESTED_BRIX;
  if (brix <= joint) return polynomial(coefficients, brix / 100);
  return interpolate(
    [[joint, polynomial(coefficients, joint / 100)], ...REFRACTION_POINTS.points],
    brix,
  );
}

/** The way back; syrup of no solids reads a hair under water, so it begins a little below 0 °Bx. */
export function brixAtIndex(refractiveIndex: number): number {
  return findRoot((brix) => indexAt(brix) - refractiveIndex, [-1, READING_DOMAIN_BRIX[1]]);
}
