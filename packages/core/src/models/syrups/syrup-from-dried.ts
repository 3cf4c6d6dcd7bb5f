import type { None } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { ROUNDING_SHARE, requireStrength, SYRUP_MASS_DOMAIN_G } from './require-syrup.js';
import type { DryStrength } from './types.js';

/** What to weigh. */
export type SyrupFromDried = { readonly driedG: number; readonly waterG: number };

/** The powder holds more water than the syrup that is wanted. */
export type NoSyrupFromDried = None<'too-dilute'> & {
  readonly highestDrySolidsMassFraction: number;
  readonly waterToRemoveG: number;
};

/**
 * How much dried glucose syrup and how much water make a syrup.
 *
 * The dextrose equivalent stays that of the powder. Stir the powder into warm water, not the other
 * way round: it clumps. Powders hold 3 to 5 parts of water in a hundred.
 *
 * @equation m = M·s / s_dried, water = M − m
 * @param make - `dried`: its dry solids, 0.01 to 1; `target`: mass, g, and dry solids of the syrup.
 * @returns `driedG` and `waterG`, g; or `none` where the powder is not dry enough.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * syrupFromDried({
 *   dried: { drySolidsMassFraction: 0.96 },
 *   target: { massG: 1_000, drySolidsMassFraction: 0.8 },
 * }).driedG // 833.33 g
 * @source definition
 */
export function syrupFromDried({
  dried,
  target,
}: {
  readonly dried: DryStrength;
  readonly target: DryStrength & { readonly massG: number };
}): SyrupFromDried | NoSyrupFromDried {
  requireStrength(dried);
  requireStrength(target);
  requireWithin('massG', target.massG, SYRUP_MASS_DOMAIN_G);
  const driedG = (target.massG * target.drySolidsMassFraction) / dried.drySolidsMassFraction;
  const waterG = target.massG - driedG;
  if (waterG < -target.massG * ROUNDING_SHARE) {
    return {
      kind: 'none',
      reason: 'too-dilute',
      highestDrySolidsMassFraction: dried.drySolidsMassFraction,
      waterToRemoveG: -waterG,
    };
  }
  return { driedG, waterG: Math.max(0, waterG) };
}
