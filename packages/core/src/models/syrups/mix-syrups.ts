import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { requireSyrup, SYRUP_MASS_DOMAIN_G } from './require-syrup.js';
import type { SyrupStrength, SyrupTarget } from './types.js';

/** A syrup, a powder or a sugar, weighed out. */
export type WeighedSyrup = SyrupStrength & { readonly massG: number };

/** All parts and water together: there must be something to mix. */
export const SYRUP_MIX_DOMAIN_G: Span = [1e-6, 1_000_000_000];

/**
 * What syrups, powders and water make when they are mixed.
 *
 * Everything mixes by dry solids: a part of twice the solids counts twice for the dextrose
 * equivalent. The other way round, see `blendTwoSyrups`.
 *
 * @equation s = Σ mᵢ·sᵢ / M, DE = Σ mᵢ·sᵢ·DEᵢ / Σ mᵢ·sᵢ
 * @param parts - Mass, g, dry solids, 0.01 to 1, and dextrose equivalent, 1 to 100, of each.
 * @param options - `waterG`: water added, g; none by default.
 * @returns `massG`, g, `drySolidsMassFraction` and `dextroseEquivalent` of the whole.
 * @throws {@link ModelRangeError} outside the domains, or if the parts weigh nothing.
 * @example
 * mixSyrups([
 *   { massG: 100, drySolidsMassFraction: 0.8, dextroseEquivalent: 42 },
 *   { massG: 100, drySolidsMassFraction: 0.8, dextroseEquivalent: 62 },
 * ]).dextroseEquivalent // 52
 * @source definition
 */
export function mixSyrups(
  parts: readonly WeighedSyrup[],
  { waterG = 0 }: { readonly waterG?: number | undefined } = {},
): SyrupTarget {
  requireWithin('waterG', waterG, SYRUP_MASS_DOMAIN_G);
  let partsG = 0;
  let solidsG = 0;
  let reducing = 0;
  for (const part of parts) {
    requireWithin('massG', part.massG, SYRUP_MASS_DOMAIN_G);
    requireSyrup(part);
    const ownG = part.massG * part.drySolidsMassFraction;
    partsG += part.massG;
    solidsG += ownG;
    reducing += ownG * part.dextroseEquivalent;
  }
  requireWithin('massG', partsG, SYRUP_MIX_DOMAIN_G);
  const massG = partsG + waterG;
  return {
    massG,
    drySolidsMassFraction: solidsG / massG,
    dextroseEquivalent: reducing / solidsG,
  };
}
