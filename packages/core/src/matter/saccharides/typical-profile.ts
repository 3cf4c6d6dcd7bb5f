import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { mixProfiles, profileAlong, profileOf } from './mix-profiles.js';
import { ACID_PROFILES, ENZYME_PROFILES } from './profile-rows.js';
import type { Profile } from './types.js';

/** Starch barely cut, to pure glucose. */
export const TYPICAL_PROFILE_DOMAIN_DEXTROSE_EQUIVALENT: Span = [1, 100];
/** Where there are printed syrups on both sides. */
export const TYPICAL_PROFILE_TESTED_DEXTROSE_EQUIVALENT: Span = [30, 100];

/** Acid conversion gives these dextrose equivalents, and no further. */
const LOWEST_ACID_SYRUP = 20;
const HIGHEST_ACID_SYRUP = 63;
const LONG_CHAINS = { dp1: 0, dp2: 0, dp3: 0, dp4plus: 1 } as const;
const PURE_GLUCOSE = { dp1: 1, dp2: 0, dp3: 0, dp4plus: 0 } as const;

/**
 * Which chain lengths a syrup, a dried syrup or a maltodextrin is likely to hold when nothing but
 * its dextrose equivalent is known.
 *
 * From 20 to 63 it is an acid-converted syrup, the usual kind. From 63 it is a blend of that with
 * the enzyme syrup of 97, and from 97 a blend of that with glucose; the enzyme syrup of 65 is left
 * out, because it holds less glucose than the acid one of 63 and glucose would have to fall. Below
 * 20 the short chains of the syrup of 20 thin out in proportion (assumed). So there is no jump, and
 * a higher figure always means more glucose and fewer long chains.
 *
 * @param dextroseEquivalent - Reducing power, dextrose = 100. Domain 1 to 100.
 * @returns `profile`, mass shares of the dry substance that sum to 1; a warning below 30.
 * @throws {@link ModelRangeError} outside 1 to 100.
 * @example
 * typicalProfile(42).profile.dp1 // 0.185
 * @source belitz-2009
 */
export function typicalProfile(dextroseEquivalent: number): Checked<{ profile: Profile }> {
  requireWithin(
    'dextroseEquivalent',
    dextroseEquivalent,
    TYPICAL_PROFILE_DOMAIN_DEXTROSE_EQUIVALENT,
  );
  return {
    profile: profileAt(dextroseEquivalent),
    warnings: warnOutside(
      'dextroseEquivalent',
      dextroseEquivalent,
      TYPICAL_PROFILE_TESTED_DEXTROSE_EQUIVALENT,
    ),
  };
}

function profileAt(dextroseEquivalent: number): Profile {
  if (dextroseEquivalent < LOWEST_ACID_SYRUP) {
    const thinnest = profileAlong(ACID_PROFILES, LOWEST_ACID_SYRUP);
    return mixProfiles(LONG_CHAINS, thinnest, dextroseEquivalent / LOWEST_ACID_SYRUP);
  }
  if (dextroseEquivalent <= HIGHEST_ACID_SYRUP) {
    return profileAlong(ACID_PROFILES, dextroseEquivalent);
  }
  const [, , enzyme] = ENZYME_PROFILES;
  const [joint] = enzyme;
  if (dextroseEquivalent > joint) {
    return mixProfiles(
      profileOf(enzyme),
      PURE_GLUCOSE,
      (dextroseEquivalent - joint) / (100 - joint),
    );
  }
  const share = (dextroseEquivalent - HIGHEST_ACID_SYRUP) / (joint - HIGHEST_ACID_SYRUP);
  return mixProfiles(profileAlong(ACID_PROFILES, HIGHEST_ACID_SYRUP), profileOf(enzyme), share);
}
