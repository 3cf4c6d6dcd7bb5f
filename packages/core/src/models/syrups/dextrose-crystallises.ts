import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { profileFromDextroseEquivalent } from '../../matter/saccharides/profile.js';
import { requireProfile } from '../../matter/saccharides/require-profile.js';
import type { Profile } from '../../matter/saccharides/types.js';
import { typicalProfile } from '../../matter/saccharides/typical-profile.js';
import { requireDextroseEquivalent } from './require-syrup.js';
import type { SyrupStrength } from './types.js';

/** Dextrose in water at 20 °C, and the rule of the trade for syrups of about 80 per cent. */
export const DEXTROSE_CRYSTAL_CONSTANTS = {
  solubilityMassFraction: {
    value: 0.478,
    source: 'hartel-2011',
    grade: 'secondary',
    note: 'monohydrate at 20 °C, dextrose alone in water',
  },
  profileShare: {
    value: 0.02,
    source: 'common-practice',
    grade: 'practice',
    note: 'makers differ by about two points either way',
  },
  practiceFromDextroseEquivalent: { value: 60, source: 'common-practice', grade: 'practice' },
  practiceToDextroseEquivalent: { value: 63, source: 'common-practice', grade: 'practice' },
} as const satisfies CitedConstants;

/** There must be some water for the dextrose to lie in. */
export const DEXTROSE_CRYSTAL_DOMAIN_DRY_SOLIDS: Span = [0.01, 0.99];
/** The rule of the trade is about syrups of the usual strength. */
export const DEXTROSE_CRYSTAL_TESTED_DRY_SOLIDS: Span = [0.75, 0.85];

/** What free dextrose in a syrup will do on standing at 20 °C. */
export type DextroseCrystals = {
  /** Dextrose on water, beside what water alone would hold: above 1 it may crystallise. */
  readonly supersaturation: number;
  readonly band: Span;
  readonly aboveSolubility: boolean;
  /** What the rule of the trade says of this dextrose equivalent. */
  readonly byPractice: 'stays-clear' | 'may-crystallise' | 'crystallises';
};

/**
 * Whether a made-up syrup throws dextrose crystals on standing. An estimate.
 *
 * It sets the free dextrose on the water of the syrup beside what water alone dissolves at 20 °C.
 * The other sugars slow crystals down, so a syrup a little above stays clear for months: the trade
 * rule, dextrose equivalent over about 60 to 63 at 80 parts in a hundred, is reached near one and a
 * half times. Where the two differ, go by the trade, and keep such a syrup warm. Blend the profiles
 * first if dextrose was stirred in: a blend holds more of it than a syrup of the same figure.
 *
 * @equation S = (s·DP1/(1 − s)) / (0.478/0.522)
 * @param syrup - `drySolidsMassFraction`, 0.01 to 0.99; `dextroseEquivalent`, 1 to 100; `profile` or
 *   `conversion` where known, else the chains a syrup of that figure usually has.
 * @returns `supersaturation` and `band`, `aboveSolubility`, and `byPractice`; warnings outside 75 to 85
 *   parts of solids in a hundred and below a dextrose equivalent of 30.
 * @throws {@link ModelRangeError} outside the domains, or if shares are not those of one whole.
 * @example
 * dextroseCrystallises({ drySolidsMassFraction: 0.8, dextroseEquivalent: 42 }).supersaturation // 0.808
 * @source hartel-2011, common-practice
 */
export function dextroseCrystallises(
  syrup: SyrupStrength & { readonly profile?: Profile | undefined },
): Checked<DextroseCrystals> {
  const { drySolidsMassFraction: s, dextroseEquivalent } = syrup;
  requireWithin('drySolidsMassFraction', s, DEXTROSE_CRYSTAL_DOMAIN_DRY_SOLIDS);
  requireDextroseEquivalent(syrup);
  const { profile, warnings } = profileOf(syrup);
  const { solubilityMassFraction: c, profileShare } = DEXTROSE_CRYSTAL_CONSTANTS;
  const perShare = (s / (1 - s)) * ((1 - c.value) / c.value);
  const supersaturation = profile.dp1 * perShare;
  return {
    supersaturation,
    band: [
      Math.max(0, profile.dp1 - profileShare.value) * perShare,
      Math.min(1, profile.dp1 + profileShare.value) * perShare,
    ],
    aboveSolubility: supersaturation > 1,
    byPractice: practiceOf(dextroseEquivalent),
    warnings: [
      ...warnOutside('drySolidsMassFraction', s, DEXTROSE_CRYSTAL_TESTED_DRY_SOLIDS),
      ...warnings,
    ],
  };
}

function profileOf({
  dextroseEquivalent,
  conversion,
  profile,
}: SyrupStrength & { readonly profile?: Profile | undefined }): Checked<{ profile: Profile }> {
  if (profile !== undefined) {
    requireProfile(profile);
    return { profile, warnings: [] };
  }
  return conversion === undefined
    ? typicalProfile(dextroseEquivalent)
    : profileFromDextroseEquivalent(dextroseEquivalent, { conversion });
}

function practiceOf(dextroseEquivalent: number): DextroseCrystals['byPractice'] {
  const { practiceFromDextroseEquivalent: from, practiceToDextroseEquivalent: to } =
    DEXTROSE_CRYSTAL_CONSTANTS;
  if (dextroseEquivalent <= from.value) return 'stays-clear';
  return dextroseEquivalent <= to.value ? 'may-crystallise' : 'crystallises';
}
