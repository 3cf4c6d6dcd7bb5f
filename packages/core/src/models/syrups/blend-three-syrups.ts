import type { None, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { ROUNDING_SHARE, requireDextroseEquivalent, requireTarget } from './require-syrup.js';
import type { SyrupStrength, SyrupTarget } from './types.js';

/** How much to weigh of each. */
export type ThreeSyrupBlend = { readonly aG: number; readonly bG: number; readonly cG: number };

/** Why no weights of the three make what is wanted. */
export type NoThreeSyrupBlend =
  | None<'parts-not-independent'>
  | (None<'outside-the-parts'> & {
      /** The parts of which less than nothing would be needed. */
      readonly wouldTakeOut: readonly ('a' | 'b' | 'c')[];
    });

/** Water, which has no dry solids, may be one of three. */
export const THREE_SYRUPS_DOMAIN_DRY_SOLIDS: Span = [0, 1];

/** Below this the three lie on one line, as near as the last digits can tell. */
const LEAST_AREA = 1e-8;

type Point = readonly [solids: number, reducing: number];

/**
 * How much of three syrups, powders or sugars makes the syrup that is wanted, with no water added.
 *
 * The three fix mass, dry solids and dextrose equivalent at once. Two of them that are alike, or
 * three of which one is a blend of the others, leave more than one answer or none.
 *
 * @equation Σ mᵢ = M, Σ mᵢ·sᵢ = M·s, Σ mᵢ·sᵢ·DEᵢ = M·s·DE
 * @param blend - `a`, `b`, `c`: dry solids, 0 to 1, and dextrose equivalent, 1 to 100, of each;
 *   `target`: mass, g, dry solids and dextrose equivalent of the syrup that is wanted.
 * @returns `aG`, `bG`, `cG`, g; or `none` where the parts are not independent or where a part would
 *   have to be taken out, with its name.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * blendThreeSyrups({
 *   a: { drySolidsMassFraction: 0.803, dextroseEquivalent: 42 },
 *   b: { drySolidsMassFraction: 0.91, dextroseEquivalent: 100 },
 *   c: { drySolidsMassFraction: 0.95, dextroseEquivalent: 10 },
 *   target: { massG: 1_000, drySolidsMassFraction: 0.83, dextroseEquivalent: 42 },
 * }).aG // 796.04 g
 * @source definition
 */
export function blendThreeSyrups({
  a,
  b,
  c,
  target,
}: {
  readonly a: SyrupStrength;
  readonly b: SyrupStrength;
  readonly c: SyrupStrength;
  readonly target: SyrupTarget;
}): ThreeSyrupBlend | NoThreeSyrupBlend {
  for (const part of [a, b, c]) {
    requireWithin(
      'drySolidsMassFraction',
      part.drySolidsMassFraction,
      THREE_SYRUPS_DOMAIN_DRY_SOLIDS,
    );
    requireDextroseEquivalent(part);
  }
  requireTarget(target);
  const [pa, pb, pc, wanted] = [pointOf(a), pointOf(b), pointOf(c), pointOf(target)] as const;
  const whole = area(pa, pb, pc);
  if (Math.abs(whole) < LEAST_AREA) return { kind: 'none', reason: 'parts-not-independent' };
  // Shares of the whole mass: a point inside a triangle, by the triangles over its other sides.
  const ofA = area(wanted, pb, pc) / whole;
  const ofB = area(pa, wanted, pc) / whole;
  const ofC = 1 - ofA - ofB;
  const wouldTakeOut = [['a', ofA] as const, ['b', ofB] as const, ['c', ofC] as const]
    .filter(([, share]) => share < -ROUNDING_SHARE)
    .map(([name]) => name);
  if (wouldTakeOut.length > 0) return { kind: 'none', reason: 'outside-the-parts', wouldTakeOut };
  const massOf = (share: number): number => target.massG * Math.max(0, share);
  return { aG: massOf(ofA), bG: massOf(ofB), cG: massOf(ofC) };
}

function pointOf({
  drySolidsMassFraction,
  dextroseEquivalent,
}: Pick<SyrupStrength, 'drySolidsMassFraction' | 'dextroseEquivalent'>): Point {
  return [drySolidsMassFraction, (drySolidsMassFraction * dextroseEquivalent) / 100];
}

/** Twice the area of a triangle, with a sign. */
function area([x1, y1]: Point, [x2, y2]: Point, [x3, y3]: Point): number {
  return (x2 - x1) * (y3 - y1) - (x3 - x1) * (y2 - y1);
}
