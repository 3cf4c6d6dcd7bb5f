import { requireWithin } from '../../foundation/validity/check.js';
import type { Ingredient } from '../ingredients/types.js';
import { dextroseEquivalentFromProfile } from '../saccharides/dextrose-equivalent.js';
import { profileFromDextroseEquivalent } from '../saccharides/profile.js';
import type { Profile } from '../saccharides/types.js';
import { typicalProfile } from '../saccharides/typical-profile.js';
import type { Part, Solid } from './types.js';

/**
 * The solids of one starch syrup. A profile beats a conversion, a conversion beats the dextrose
 * equivalent alone; what the cook left out is the default of the ingredient.
 */
export function syrupSolids(part: Part, record: Ingredient, massG: number): Solid {
  const { conversion, profile } = part;
  const stated = part.dextroseEquivalent;
  const dextroseEquivalent = stated ?? record.dextroseEquivalent?.value ?? Number.NaN;
  if (profile !== undefined) {
    requireWhole(profile);
    const cut = conversion ?? record.conversion ?? 'acid';
    return {
      kind: 'saccharides',
      massG,
      dextroseEquivalent:
        stated === undefined
          ? dextroseEquivalentFromProfile(profile, { conversion: cut }).dextroseEquivalent
          : within(stated),
      profile,
      given: 'profile',
    };
  }
  return {
    kind: 'saccharides',
    massG,
    dextroseEquivalent: within(dextroseEquivalent),
    profile:
      conversion === undefined
        ? typicalProfile(dextroseEquivalent).profile
        : profileFromDextroseEquivalent(dextroseEquivalent, { conversion }).profile,
    given: conversion === undefined ? 'de' : 'profile',
  };
}

/** From starch barely cut to pure glucose. */
function within(dextroseEquivalent: number): number {
  requireWithin('dextroseEquivalent', dextroseEquivalent, [1, 100]);
  return dextroseEquivalent;
}

function requireWhole({ dp1, dp2, dp3, dp4plus }: Profile): void {
  requireWithin('sumOfProfile', dp1 + dp2 + dp3 + dp4plus, [1 - 1e-6, 1 + 1e-6]);
}
