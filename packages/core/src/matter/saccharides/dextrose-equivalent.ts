import type { Checked, Span } from '../../foundation/results/types.js';
import { warnOutside } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { COPPER_REDUCING_ENDS, shortChainEnds } from './reducing-ends.js';
import { requireConversion, requireProfile } from './require-profile.js';
import type { Conversion, Profile } from './types.js';

const source = 'syrup-profile-fit';
const grade = 'derived';

/** What the chains of four units and more add, by the way the starch was cut. */
export const DEXTROSE_EQUIVALENT_CONSTANTS = {
  acidLongChainEnds: { value: 0.08, source, grade },
  acidLongChainSlope: { value: 0.0026, source, grade, note: 'per cent of long chains' },
  enzymeLongChainEnds: { value: 0.13, source, grade },
} as const satisfies CitedConstants;

/** Dextrose equivalents of the syrups the two fits rest on. */
export const DEXTROSE_EQUIVALENT_TESTED = {
  acid: [20, 63],
  enzyme: [40, 97],
} as const satisfies Readonly<Record<string, Span>>;

/**
 * The dextrose equivalent a syrup of known chain lengths would be sold under.
 *
 * Use it for a blend of syrups, or to check a certificate. It follows the copper method, which
 * reads long chains about a tenth too high; for counting molecules see `molarMassFromProfile`.
 *
 * @equation acid: DE = (S + 0.08·H) / (1 − 0.0026·H); enzyme: DE = S + 0.13·H, with
 *   S = DP1 + 0.58·DP2 + 0.395·DP3 and H = DP4 and longer, per cent of dry substance
 * @param profile - Mass shares of the dry substance, 0 to 1, summing to 1.
 * @param options - `conversion`: how the starch was cut. High maltose counts as enzyme.
 * @returns `dextroseEquivalent`, 0 to 100, within about 1.3; a warning outside 20 to 63 for acid
 *   and 40 to 97 for the others.
 * @throws {@link ModelRangeError} if the shares are not those of one whole.
 * @example
 * dextroseEquivalentFromProfile(
 *   { dp1: 0.36, dp2: 0.2, dp3: 0.13, dp4plus: 0.31 },
 *   { conversion: 'acid' },
 * ).dextroseEquivalent // 60.06
 * @source syrup-profile-fit
 */
export function dextroseEquivalentFromProfile(
  profile: Profile,
  { conversion }: { readonly conversion: Conversion },
): Checked<{ dextroseEquivalent: number }> {
  requireProfile(profile);
  requireConversion(conversion);
  const {
    acidLongChainEnds: a,
    acidLongChainSlope: b,
    enzymeLongChainEnds: c,
  } = DEXTROSE_EQUIVALENT_CONSTANTS;
  const S = shortChainEnds(profile, COPPER_REDUCING_ENDS);
  const H = 100 * profile.dp4plus;
  const isAcid = conversion === 'acid';
  const dextroseEquivalent = isAcid ? (S + a.value * H) / (1 - b.value * H) : S + c.value * H;
  return {
    dextroseEquivalent,
    warnings: warnOutside(
      'dextroseEquivalent',
      dextroseEquivalent,
      DEXTROSE_EQUIVALENT_TESTED[isAcid ? 'acid' : 'enzyme'],
    ),
  };
}
