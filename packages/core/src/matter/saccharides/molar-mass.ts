import type { Checked, ModelWarning, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { Cited } from '../../foundation/validity/constants.js';
import { COPPER_REDUCING_ENDS, shortChainEnds, THEORY_REDUCING_ENDS } from './reducing-ends.js';
import { requireProfile } from './require-profile.js';
import type { Profile } from './types.js';

/** Molar mass of glucose, by formula, times a hundred: M of a syrup of one unit of DE. */
export const GLUCOSE_TIMES_HUNDRED_G_PER_MOL = {
  value: 18_015.6,
  source: 'definition',
  grade: 'derived',
} as const satisfies Cited;

/** Share of the copper method's ends that long chains really have. */
export const LONG_CHAIN_SHARE = {
  value: 0.9,
  source: 'syrup-profile-fit',
  grade: 'derived',
} as const satisfies Cited;

/** Ends of the chains of four units and more lie between these, per cent of dextrose. */
export const LONG_CHAIN_ENDS: Span = [6, 25];

/** Starch barely cut, to glucose. */
export const MOLAR_MASS_DOMAIN_DEXTROSE_EQUIVALENT: Span = [1, 100];
/** The published syrups. */
export const MOLAR_MASS_TESTED_DEXTROSE_EQUIVALENT: Span = [30, 100];

/**
 * Mean molar mass of syrup solids when only the dextrose equivalent is known.
 *
 * Every chain has one reducing end, so the reducing power counts the molecules.
 *
 * @equation M = 18 015.6 / DE
 * @param dextroseEquivalent - Reducing power, dextrose = 100. Domain 1 to 100.
 * @returns `molarMassGPerMol`, number average, g/mol; a warning below 30.
 * @throws {@link ModelRangeError} outside 1 to 100.
 * @example
 * molarMassFromDextroseEquivalent(42).molarMassGPerMol // 428.943
 * @source definition
 */
export function molarMassFromDextroseEquivalent(
  dextroseEquivalent: number,
): Checked<{ molarMassGPerMol: number }> {
  return {
    molarMassGPerMol: GLUCOSE_TIMES_HUNDRED_G_PER_MOL.value / dextroseEquivalent,
    warnings: checkDextroseEquivalent(dextroseEquivalent),
  };
}

/**
 * Mean molar mass of syrup solids whose chain lengths are known.
 *
 * It is 5 to 9 % above the figure from the dextrose equivalent alone, because the copper method
 * over-reads long chains; the boiling point differs by 0.05 to 0.2 K. Print the difference.
 *
 * @equation M = 18 015.6 / Σ p·e, with e by theory for DP1 to 3; DP4 and longer take 0.9 times
 *   what closes the copper sum on the dextrose equivalent, kept within 6 to 25
 * @param syrup - `profile`, mass shares that sum to 1; `dextroseEquivalent` as labelled, 1 to 100.
 * @returns `molarMassGPerMol`, number average, g/mol; a warning below a DE of 30.
 * @throws {@link ModelRangeError} if the shares are not those of one whole, or outside 1 to 100.
 * @example
 * molarMassFromProfile({
 *   profile: { dp1: 0.185, dp2: 0.139, dp3: 0.116, dp4plus: 0.56 },
 *   dextroseEquivalent: 42,
 * }).molarMassGPerMol // 453.47
 * @source syrup-profile-fit
 */
export function molarMassFromProfile({
  profile,
  dextroseEquivalent,
}: {
  readonly profile: Profile;
  readonly dextroseEquivalent: number;
}): Checked<{ molarMassGPerMol: number }> {
  requireProfile(profile);
  const warnings = checkDextroseEquivalent(dextroseEquivalent);
  const short = shortChainEnds(profile, THEORY_REDUCING_ENDS);
  const closing = dextroseEquivalent - shortChainEnds(profile, COPPER_REDUCING_ENDS);
  // p·e rather than e: nothing is divided by a share of long chains that may be nought.
  const [fewest, most] = LONG_CHAIN_ENDS;
  const long = Math.min(
    Math.max(LONG_CHAIN_SHARE.value * closing, fewest * profile.dp4plus),
    most * profile.dp4plus,
  );
  return { molarMassGPerMol: GLUCOSE_TIMES_HUNDRED_G_PER_MOL.value / (short + long), warnings };
}

function checkDextroseEquivalent(dextroseEquivalent: number): readonly ModelWarning[] {
  requireWithin('dextroseEquivalent', dextroseEquivalent, MOLAR_MASS_DOMAIN_DEXTROSE_EQUIVALENT);
  return warnOutside(
    'dextroseEquivalent',
    dextroseEquivalent,
    MOLAR_MASS_TESTED_DEXTROSE_EQUIVALENT,
  );
}
