import type { Checked, Span } from '../../foundation/results/types.js';
import { warnOutside } from '../../foundation/validity/check.js';
import { profileAlong, profileOf } from './mix-profiles.js';
import { ACID_PROFILES, ENZYME_PROFILES, HIGH_MALTOSE_PROFILE } from './profile-rows.js';
import { requireReachable } from './require-profile.js';
import type { Conversion, Profile } from './types.js';

/** Below this no acid-converted syrup with a printed profile was found. */
export const ACID_PROFILE_TESTED_DEXTROSE_EQUIVALENT: Span = [30, 63];

/**
 * Which chain lengths a glucose syrup is likely to hold, from the figure on its label.
 *
 * Two syrups of one dextrose equivalent can hold 5 or 18 parts of glucose in a hundred, so the way
 * the starch was cut must be known: a regular confectioner's syrup is `acid`, one sold as high
 * maltose is `high-maltose`. Makers differ by about two points either way; a certificate is better.
 *
 * @param dextroseEquivalent - Reducing power, dextrose = 100. Acid 20 to 63, enzyme 45 to 97,
 *   high maltose 40 to 50.
 * @param options - `conversion`: how the starch was cut.
 * @returns `profile`, mass shares of the dry substance that sum to 1; a warning for an acid syrup
 *   below 30.
 * @throws {@link ModelRangeError} if that conversion does not reach that dextrose equivalent.
 * @example
 * profileFromDextroseEquivalent(42, { conversion: 'acid' }).profile.dp1 // 0.185
 * @source belitz-2009
 */
export function profileFromDextroseEquivalent(
  dextroseEquivalent: number,
  { conversion }: { readonly conversion: Conversion },
): Checked<{ profile: Profile }> {
  requireReachable(dextroseEquivalent, conversion);
  const profile =
    conversion === 'high-maltose'
      ? profileOf(HIGH_MALTOSE_PROFILE)
      : profileAlong(conversion === 'enzyme' ? ENZYME_PROFILES : ACID_PROFILES, dextroseEquivalent);
  return {
    profile,
    warnings:
      conversion === 'acid'
        ? warnOutside(
            'dextroseEquivalent',
            dextroseEquivalent,
            ACID_PROFILE_TESTED_DEXTROSE_EQUIVALENT,
          )
        : [],
  };
}
