import type { None, Span } from '../../foundation/results/types.js';
import { ROUNDING_SHARE, requireSyrup, requireTarget } from './require-syrup.js';
import type { SyrupStrength, SyrupTarget } from './types.js';

/** How much to weigh of each. */
export type TwoSyrupBlend = { readonly aG: number; readonly bG: number; readonly waterG: number };

/** Why no weights of the two make what is wanted, and what else would be needed. */
export type NoTwoSyrupBlend =
  | (None<'target-above-both' | 'target-below-both' | 'same-dextrose-equivalent'> & {
      /** What the two reach between them. */
      readonly dextroseEquivalents: Span;
      readonly missing:
        | 'higher-dextrose-equivalent'
        | 'lower-dextrose-equivalent'
        | 'another-dextrose-equivalent';
    })
  | (None<'too-dilute'> & {
      readonly missing: 'drier-part';
      /** The most this blend reaches, without a drop of water. */
      readonly highestDrySolidsMassFraction: number;
      /** What would have to boil away. */
      readonly waterToRemoveG: number;
    });

/**
 * How much of two syrups, powders or sugars, and of water, makes the syrup that is wanted.
 *
 * A syrup of 42 and dextrose make one of 52; a dried syrup and a maltodextrin make one of 28. It is a
 * balance of dry solids: water is what is left. Two parts of one dextrose equivalent blend to no
 * other, so a part is never blended with itself.
 *
 * @equation x = (DE − DE_b) / (DE_a − DE_b), m_a = S·x/s_a, m_b = S·(1 − x)/s_b, S = M·s
 * @param blend - `a`, `b`: dry solids, 0.01 to 1, and dextrose equivalent, 1 to 100, of each, with
 *   `conversion` if the figure is to be held against what that cut reaches; `target`: mass, g, dry
 *   solids and dextrose equivalent of the syrup that is wanted.
 * @returns `aG`, `bG`, `waterG`, g; or `none` where the target lies above or below both, where both
 *   are alike, or where water would have to come out, with what is missing.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * blendTwoSyrups({
 *   a: { drySolidsMassFraction: 0.803, dextroseEquivalent: 42 },
 *   b: { drySolidsMassFraction: 0.91, dextroseEquivalent: 100 },
 *   target: { massG: 1_000, drySolidsMassFraction: 0.8, dextroseEquivalent: 52 },
 * }).aG // 824.49 g
 * @source definition
 */
export function blendTwoSyrups({
  a,
  b,
  target,
}: {
  readonly a: SyrupStrength;
  readonly b: SyrupStrength;
  readonly target: SyrupTarget;
}): TwoSyrupBlend | NoTwoSyrupBlend {
  requireSyrup(a);
  requireSyrup(b);
  requireTarget(target);
  const { massG, drySolidsMassFraction, dextroseEquivalent } = target;
  const apart = reasonApart(a.dextroseEquivalent, b.dextroseEquivalent, dextroseEquivalent);
  if (apart !== undefined) return apart;
  // The target lies between the two, so both differences have one sign and none is needed.
  const x =
    Math.abs(dextroseEquivalent - b.dextroseEquivalent) /
    Math.abs(a.dextroseEquivalent - b.dextroseEquivalent);
  const aPerSolids = x / a.drySolidsMassFraction;
  const bPerSolids = (1 - x) / b.drySolidsMassFraction;
  const solidsG = massG * drySolidsMassFraction;
  const waterG = massG - solidsG * (aPerSolids + bPerSolids);
  if (waterG < -massG * ROUNDING_SHARE) {
    return {
      kind: 'none',
      reason: 'too-dilute',
      missing: 'drier-part',
      highestDrySolidsMassFraction: 1 / (aPerSolids + bPerSolids),
      waterToRemoveG: -waterG,
    };
  }
  return { aG: solidsG * aPerSolids, bG: solidsG * bPerSolids, waterG: Math.max(0, waterG) };
}

function reasonApart(a: number, b: number, wanted: number): NoTwoSyrupBlend | undefined {
  const dextroseEquivalents = [Math.min(a, b), Math.max(a, b)] as const;
  const [low, high] = dextroseEquivalents;
  const kind = 'none';
  if (wanted > high) {
    const missing = 'higher-dextrose-equivalent';
    return { kind, reason: 'target-above-both', dextroseEquivalents, missing };
  }
  if (wanted < low) {
    const missing = 'lower-dextrose-equivalent';
    return { kind, reason: 'target-below-both', dextroseEquivalents, missing };
  }
  if (low < high) return undefined;
  const missing = 'another-dextrose-equivalent';
  return { kind, reason: 'same-dextrose-equivalent', dextroseEquivalents, missing };
}
