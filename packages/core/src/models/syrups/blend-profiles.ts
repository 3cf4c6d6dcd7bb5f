import { requireWithin } from '../../foundation/validity/check.js';
import { requireProfile } from '../../matter/saccharides/require-profile.js';
import type { Profile } from '../../matter/saccharides/types.js';
import { SYRUP_MIX_DOMAIN_G } from './mix-syrups.js';
import { SYRUP_MASS_DOMAIN_G } from './require-syrup.js';

/** The solids of one syrup. */
export type ProfiledSolids = { readonly profile: Profile; readonly drySolidsG: number };

/**
 * Which chain lengths a blend of syrups holds.
 *
 * Shares mix by dry solids. Dextrose is `{ dp1: 1, dp2: 0, dp3: 0, dp4plus: 0 }`. A printed profile
 * is rounded and seldom sums to one exactly, so each is taken as shares of its own sum. The dextrose
 * equivalent of the blend is the mean of the parts, by dry solids; `dextroseEquivalentFromProfile`
 * also gives one, but for syrups of one conversion.
 *
 * @equation pⱼ = Σ Sᵢ·pᵢⱼ / Σ Sᵢ
 * @param parts - `profile`, shares that sum to one, and `drySolidsG`, g, of each.
 * @returns `profile` of the blend, shares that sum to 1.
 * @throws {@link ModelRangeError} if shares are not those of one whole, or there are no solids.
 * @example
 * blendProfiles([
 *   { profile: { dp1: 0.185, dp2: 0.139, dp3: 0.116, dp4plus: 0.56 }, drySolidsG: 80 },
 *   { profile: { dp1: 1, dp2: 0, dp3: 0, dp4plus: 0 }, drySolidsG: 20 },
 * ]).profile.dp1 // 0.348
 * @source definition
 */
export function blendProfiles(parts: readonly ProfiledSolids[]): { readonly profile: Profile } {
  let solidsG = 0;
  let dp1 = 0;
  let dp2 = 0;
  let dp3 = 0;
  let dp4plus = 0;
  for (const { profile, drySolidsG } of parts) {
    requireProfile(profile);
    requireWithin('drySolidsG', drySolidsG, SYRUP_MASS_DOMAIN_G);
    const perShare = drySolidsG / (profile.dp1 + profile.dp2 + profile.dp3 + profile.dp4plus);
    solidsG += drySolidsG;
    dp1 += profile.dp1 * perShare;
    dp2 += profile.dp2 * perShare;
    dp3 += profile.dp3 * perShare;
    dp4plus += profile.dp4plus * perShare;
  }
  requireWithin('drySolidsG', solidsG, SYRUP_MIX_DOMAIN_G);
  return {
    profile: {
      dp1: dp1 / solidsG,
      dp2: dp2 / solidsG,
      dp3: dp3 / solidsG,
      dp4plus: dp4plus / solidsG,
    },
  };
}
