import type { Checked, ModelWarning, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { sucroseKgPerM3 } from './sucrose-solution.js';
import { DENSITY_DOMAIN_C, DENSITY_TESTED_C } from './water-density.js';

const source = 'syrup-density-fit';
const grade = 'derived';

/** How much denser syrup solids are than as much sucrose, at 80 parts of them in a hundred. */
export const SYRUP_DENSITY_CONSTANTS = {
  excess: { value: 0.01, source, grade },
  excessPerDextroseEquivalent: { value: 0.0004, source, grade },
  atDextroseEquivalent: { value: 42, source, grade },
  atDrySolids: { value: 0.8, source, grade },
  plusMinusShare: { value: 0.005, source, grade },
} as const satisfies CitedConstants;

/** Starch barely cut, to dextrose. */
export const SYRUP_DENSITY_DOMAIN_DEXTROSE_EQUIVALENT: Span = [1, 100];
/** The fit was made for these. */
export const SYRUP_DENSITY_TESTED_DEXTROSE_EQUIVALENT: Span = [20, 70];
/** From water to dry solids, on which the polynomial of sucrose is run on. */
export const SYRUP_DENSITY_DOMAIN_DRY_SOLIDS: Span = [0, 1];
/** The polynomial of sucrose was made for these. */
export const SYRUP_DENSITY_TESTED_DRY_SOLIDS: Span = [0, 0.85];

/** A glucose syrup by its two figures. */
export type GlucoseSyrup = {
  readonly dextroseEquivalent: number;
  readonly drySolidsMassFraction: number;
};

/**
 * Density of a glucose syrup: that of sugar water of equal solids and a little more. An estimate.
 *
 * Longer chains lie denser, so a lower dextrose equivalent weighs more. Good to half a per cent; it
 * rests on four recalled syrups at 60 °C.
 *
 * @equation ρ = ρ_sucrose(s, T)·(1 + (0.010 + 0.0004·(42 − DE))·s/0.80)
 * @param syrup - `dextroseEquivalent`, 1 to 100; `drySolidsMassFraction`, 0 to 1; `temperatureC`, °C,
 *   0 to 150.
 * @returns `densityKgPerM3` and `band`, kg/m³, with a warning outside a dextrose equivalent of 20 to
 *   70, over 85 parts of solids in a hundred and over 100 °C.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * glucoseSyrupDensity({
 *   dextroseEquivalent: 42,
 *   drySolidsMassFraction: 0.8,
 *   temperatureC: 20,
 * }).densityKgPerM3 // 1426.32 kg/m³
 * @source syrup-density-fit, icumsa-1994
 */
export function glucoseSyrupDensity({
  dextroseEquivalent,
  drySolidsMassFraction,
  temperatureC,
}: GlucoseSyrup & { readonly temperatureC: number }): Checked<{
  densityKgPerM3: number;
  band: Span;
}> {
  const syrup = { dextroseEquivalent, drySolidsMassFraction };
  requireGlucoseSyrup(syrup);
  requireWithin('temperatureC', temperatureC, DENSITY_DOMAIN_C);
  const densityKgPerM3 = syrupKgPerM3(syrup, temperatureC);
  const share = SYRUP_DENSITY_CONSTANTS.plusMinusShare.value;
  return {
    densityKgPerM3,
    band: [densityKgPerM3 * (1 - share), densityKgPerM3 * (1 + share)],
    warnings: [
      ...untestedSyrup(syrup),
      ...warnOutside('temperatureC', temperatureC, DENSITY_TESTED_C),
    ],
  };
}

/** The equation alone. */
export function syrupKgPerM3(
  { dextroseEquivalent, drySolidsMassFraction: s }: GlucoseSyrup,
  temperatureC: number,
): number {
  const {
    excess,
    excessPerDextroseEquivalent: slope,
    atDextroseEquivalent: DE0,
    atDrySolids: s0,
  } = SYRUP_DENSITY_CONSTANTS;
  const ratio = excess.value + slope.value * (DE0.value - dextroseEquivalent);
  return sucroseKgPerM3(s, temperatureC) * (1 + (ratio * s) / s0.value);
}

/** @throws ModelRangeError if there is no such syrup. */
export function requireGlucoseSyrup(syrup: GlucoseSyrup): void {
  const { dextroseEquivalent, drySolidsMassFraction } = syrup;
  requireWithin('dextroseEquivalent', dextroseEquivalent, SYRUP_DENSITY_DOMAIN_DEXTROSE_EQUIVALENT);
  requireWithin('drySolidsMassFraction', drySolidsMassFraction, SYRUP_DENSITY_DOMAIN_DRY_SOLIDS);
}

/** Warnings about the syrup itself. */
export function untestedSyrup(syrup: GlucoseSyrup): readonly ModelWarning[] {
  const { dextroseEquivalent, drySolidsMassFraction } = syrup;
  return [
    ...warnOutside(
      'dextroseEquivalent',
      dextroseEquivalent,
      SYRUP_DENSITY_TESTED_DEXTROSE_EQUIVALENT,
    ),
    ...warnOutside('drySolidsMassFraction', drySolidsMassFraction, SYRUP_DENSITY_TESTED_DRY_SOLIDS),
  ];
}
