import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { requireReachable } from '../../matter/saccharides/require-profile.js';
import type { DryStrength, SyrupStrength, SyrupTarget } from './types.js';

/** From sugar water to a dry powder. */
export const SYRUP_DOMAIN_DRY_SOLIDS: Span = [0.01, 1];
/** Starch barely cut, to dextrose. */
export const SYRUP_DOMAIN_DEXTROSE_EQUIVALENT: Span = [1, 100];
/** A pinch to a thousand tonnes. */
export const SYRUP_MASS_DOMAIN_G: Span = [0, 1_000_000_000];

/** Less than this share of the whole is a rounding of the last digits, and counts as nothing. */
export const ROUNDING_SHARE = 1e-9;

/** @throws ModelRangeError if nothing is that dry. */
export function requireStrength({ drySolidsMassFraction }: DryStrength): void {
  requireWithin('drySolidsMassFraction', drySolidsMassFraction, SYRUP_DOMAIN_DRY_SOLIDS);
}

/** @throws ModelRangeError if there is no such dextrose equivalent, or not by this conversion. */
export function requireDextroseEquivalent({
  dextroseEquivalent,
  conversion,
}: Pick<SyrupStrength, 'dextroseEquivalent' | 'conversion'>): void {
  requireWithin('dextroseEquivalent', dextroseEquivalent, SYRUP_DOMAIN_DEXTROSE_EQUIVALENT);
  if (conversion !== undefined) requireReachable(dextroseEquivalent, conversion);
}

/** @throws ModelRangeError if this is no syrup. */
export function requireSyrup(syrup: SyrupStrength): void {
  requireStrength(syrup);
  requireDextroseEquivalent(syrup);
}

/** @throws ModelRangeError if this syrup cannot be wanted. */
export function requireTarget(target: SyrupTarget): void {
  requireWithin('massG', target.massG, SYRUP_MASS_DOMAIN_G);
  requireSyrup(target);
}
