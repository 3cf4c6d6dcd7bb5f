import { findRoot } from '../../foundation/numeric/find-root.js';
import type { Pedigree } from '../../foundation/numeric/pedigree.js';
import type { Checked, ModelWarning, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { polynomial } from './polynomial.js';

/**
 * Refractive index of glucose syrup: by rising power of the dry solids at 20 °C, then what each
 * degree over 20 °C adds, and what its square adds, by rising power of the dry solids too.
 */
export const SYRUP_REFRACTION_COEFFICIENTS = {
  source: 'syrup-refraction-fit',
  grade: 'derived',
  at20C: [1.332977, 0.149488, 0.0589594, 0.0115857, 0.00981583],
  perK: [-9.47015e-5, -1.472218e-4, 2.50774e-5],
  perK2: [-1.221909e-6, 8.91245e-7, 3.38428e-7],
} as const satisfies Pedigree & Readonly<Record<'at20C' | 'perK' | 'perK2', readonly number[]>>;

/** Beyond 66 parts in a hundred the fit is run on, to the strongest syrup that is sold. */
export const SYRUP_REFRACTION_DOMAIN_DRY_SOLIDS: Span = [0, 0.85];
/** Printed rows lie between these. */
export const SYRUP_REFRACTION_TESTED_DRY_SOLIDS: Span = [0, 0.66];
/** A bench refractometer; do not read hotter syrup: it dries while it is looked at, °C. */
export const SYRUP_REFRACTION_DOMAIN_C: Span = [10, 60];
/** Printed columns lie between these, °C. */
export const SYRUP_REFRACTION_TESTED_C: Span = [20, 60];

/**
 * How strongly a glucose syrup bends light, at 589 nm.
 *
 * Within 0.00005 of the printed table, which does not show the class of its syrup: its distance
 * from sucrose marks a low dextrose equivalent. Higher ones lie nearer to sucrose.
 *
 * @equation n = Σ aᵢ·sⁱ + t·Σ bᵢ·sⁱ + t²·Σ cᵢ·sⁱ, t = T − 20
 * @param syrup - `drySolidsMassFraction`, 0 to 0.85; `temperatureC`, °C, 10 to 60.
 * @returns `refractiveIndex`, with a warning over 66 parts of solids in a hundred and below 20 °C.
 * @throws {@link ModelRangeError} outside the domains; do not read hot syrup.
 * @example
 * glucoseSyrupRefractiveIndex({
 *   drySolidsMassFraction: 0.6,
 *   temperatureC: 20,
 * }).refractiveIndex // 1.44767
 * @source syrup-refraction-fit, iso-1743-1982
 */
export function glucoseSyrupRefractiveIndex({
  drySolidsMassFraction,
  temperatureC,
}: {
  readonly drySolidsMassFraction: number;
  readonly temperatureC: number;
}): Checked<{ refractiveIndex: number }> {
  requireWithin('drySolidsMassFraction', drySolidsMassFraction, SYRUP_REFRACTION_DOMAIN_DRY_SOLIDS);
  requireWithin('temperatureC', temperatureC, SYRUP_REFRACTION_DOMAIN_C);
  return {
    refractiveIndex: syrupIndexAt(drySolidsMassFraction, temperatureC),
    warnings: outsideTable(drySolidsMassFraction, temperatureC),
  };
}

/**
 * Dry solids of a glucose syrup of low dextrose equivalent from its refractive index.
 *
 * For what a sugar refractometer shows, in °Bx, see `drySolidsFromSucroseRefractometer`.
 *
 * @equation n(s, T) = n, solved for s
 * @param reading - `refractiveIndex`: from that of no solids to that of 85 parts in a hundred at this
 *   temperature; `temperatureC` of prism and sample, °C, 10 to 60.
 * @returns `drySolidsMassFraction`, 0 to 0.85, with a warning over 0.66 and below 20 °C.
 * @throws {@link ModelRangeError} outside the domains; do not read hot syrup.
 * @example
 * drySolidsFromGlucoseSyrupRefractiveIndex({
 *   refractiveIndex: 1.44767,
 *   temperatureC: 20,
 * }).drySolidsMassFraction // 0.600
 * @source syrup-refraction-fit, iso-1743-1982
 */
export function drySolidsFromGlucoseSyrupRefractiveIndex({
  refractiveIndex,
  temperatureC,
}: {
  readonly refractiveIndex: number;
  readonly temperatureC: number;
}): Checked<{ drySolidsMassFraction: number }> {
  requireWithin('temperatureC', temperatureC, SYRUP_REFRACTION_DOMAIN_C);
  const [thin, thick] = SYRUP_REFRACTION_DOMAIN_DRY_SOLIDS;
  requireWithin('refractiveIndex', refractiveIndex, [
    syrupIndexAt(thin, temperatureC),
    syrupIndexAt(thick, temperatureC),
  ]);
  const drySolidsMassFraction = findRoot(
    (s) => syrupIndexAt(s, temperatureC) - refractiveIndex,
    SYRUP_REFRACTION_DOMAIN_DRY_SOLIDS,
  );
  return { drySolidsMassFraction, warnings: outsideTable(drySolidsMassFraction, temperatureC) };
}

/** The fit alone. */
export function syrupIndexAt(drySolidsMassFraction: number, temperatureC: number): number {
  const { at20C, perK, perK2 } = SYRUP_REFRACTION_COEFFICIENTS;
  const t = temperatureC - 20;
  const of = (coefficients: readonly number[]) => polynomial(coefficients, drySolidsMassFraction);
  return of(at20C) + t * of(perK) + t ** 2 * of(perK2);
}

function outsideTable(
  drySolidsMassFraction: number,
  temperatureC: number,
): readonly ModelWarning[] {
  return [
    ...warnOutside(
      'drySolidsMassFraction',
      drySolidsMassFraction,
      SYRUP_REFRACTION_TESTED_DRY_SOLIDS,
    ),
    ...warnOutside('temperatureC', temperatureC, SYRUP_REFRACTION_TESTED_C),
  ];
}
