import { findRoot } from '../../foundation/numeric/find-root.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import {
  type GlucoseSyrup,
  SYRUP_DENSITY_DOMAIN_DEXTROSE_EQUIVALENT,
} from './glucose-syrup-density.js';
import {
  SYRUP_REFRACTION_DOMAIN_DRY_SOLIDS,
  SYRUP_REFRACTION_TESTED_DRY_SOLIDS,
  syrupIndexAt,
} from './glucose-syrup-refraction.js';
import { brixAtIndex } from './refractive-index.js';

/** How the over-read falls off between the syrup of the table and dextrose. */
export const OVERREAD_CONSTANTS = {
  fullAtDextroseEquivalent: {
    value: 20,
    source: 'assumption',
    grade: 'assumed',
    note: 'the table shows no class; its distance from sucrose marks a low one',
  },
  noneAtDextroseEquivalent: { value: 100, source: 'assumption', grade: 'assumed' },
  plusMinusShare: { value: 0.5, source: 'assumption', grade: 'assumed' },
} as const satisfies CitedConstants;

/** Where table and fit were made, °C. */
const AT_C = 20;

/**
 * By how much a sugar refractometer reads too high in glucose syrup, at 20 °C. An estimate.
 *
 * About 2.5 °Bx at 60 parts of solids in a hundred for the syrup of the one printed table, which is
 * of a low dextrose equivalent; assumed to fall in a straight line to nothing at dextrose. Half of
 * it may be wrong. In a mixture with sugar it counts for the share of syrup solids.
 *
 * @equation Δ = (Bx(n_syrup(s)) − 100·s)·(100 − DE)/(100 − 20)
 * @param syrup - `drySolidsMassFraction`, 0 to 0.85; `dextroseEquivalent`, 1 to 100.
 * @returns `overreadBrix` and `band`, °Bx, with a warning over 66 parts of solids in a hundred.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * sucroseRefractometerOverread({
 *   drySolidsMassFraction: 0.6,
 *   dextroseEquivalent: 42,
 * }).overreadBrix // 1.82 °Bx
 * @source syrup-refraction-fit, refraction-fit, assumption
 */
export function sucroseRefractometerOverread({
  drySolidsMassFraction,
  dextroseEquivalent,
}: GlucoseSyrup): Checked<{ overreadBrix: number; band: Span }> {
  requireDextroseEquivalent(dextroseEquivalent);
  requireWithin('drySolidsMassFraction', drySolidsMassFraction, SYRUP_REFRACTION_DOMAIN_DRY_SOLIDS);
  const overreadBrix = overreadAt(drySolidsMassFraction, dextroseEquivalent);
  const apart = Math.abs(overreadBrix) * OVERREAD_CONSTANTS.plusMinusShare.value;
  return {
    overreadBrix,
    band: [overreadBrix - apart, overreadBrix + apart],
    warnings: warnOutside(
      'drySolidsMassFraction',
      drySolidsMassFraction,
      SYRUP_REFRACTION_TESTED_DRY_SOLIDS,
    ),
  };
}

/**
 * Dry solids of a glucose syrup from what a sugar refractometer shows in it at 20 °C. An estimate.
 *
 * Thin a strong syrup with its own weight of water and double the answer: the table ends at 66.
 *
 * @equation 100·s + Δ(s, DE) = Bx, solved for s
 * @param reading - `brix` as shown, corrected to 20 °C; `dextroseEquivalent`, 1 to 100.
 * @returns `drySolidsMassFraction` and `band`, 0 to 1, with a warning over 0.66.
 * @throws {@link ModelRangeError} outside what 0 to 85 parts of solids in a hundred give.
 * @example
 * drySolidsFromSucroseRefractometer({
 *   brix: 61.82,
 *   dextroseEquivalent: 42,
 * }).drySolidsMassFraction // 0.600
 * @source syrup-refraction-fit, refraction-fit, assumption
 */
export function drySolidsFromSucroseRefractometer({
  brix,
  dextroseEquivalent,
}: {
  readonly brix: number;
  readonly dextroseEquivalent: number;
}): Checked<{ drySolidsMassFraction: number; band: Span }> {
  requireDextroseEquivalent(dextroseEquivalent);
  const [, strongest] = SYRUP_REFRACTION_DOMAIN_DRY_SOLIDS;
  const shown = (s: number): number => 100 * s + overreadAt(s, dextroseEquivalent);
  requireWithin('brix', brix, [0, shown(strongest)]);
  // The fit of syrup begins a hair under that of water, so there is a crossing for nought as well.
  const drySolidsMassFraction = findRoot(
    (s) => shown(s) - brix,
    SYRUP_REFRACTION_DOMAIN_DRY_SOLIDS,
  );
  const apart =
    Math.abs(brix / 100 - drySolidsMassFraction) * OVERREAD_CONSTANTS.plusMinusShare.value;
  return {
    drySolidsMassFraction,
    band: [Math.max(0, drySolidsMassFraction - apart), drySolidsMassFraction + apart],
    warnings: warnOutside(
      'drySolidsMassFraction',
      drySolidsMassFraction,
      SYRUP_REFRACTION_TESTED_DRY_SOLIDS,
    ),
  };
}

function overreadAt(drySolidsMassFraction: number, dextroseEquivalent: number): number {
  const { fullAtDextroseEquivalent: full, noneAtDextroseEquivalent: nothing } = OVERREAD_CONSTANTS;
  const lowDextroseEquivalent =
    brixAtIndex(syrupIndexAt(drySolidsMassFraction, AT_C)) - 100 * drySolidsMassFraction;
  return (
    (lowDextroseEquivalent * (nothing.value - dextroseEquivalent)) / (nothing.value - full.value)
  );
}

function requireDextroseEquivalent(dextroseEquivalent: number): void {
  requireWithin('dextroseEquivalent', dextroseEquivalent, SYRUP_DENSITY_DOMAIN_DEXTROSE_EQUIVALENT);
}
