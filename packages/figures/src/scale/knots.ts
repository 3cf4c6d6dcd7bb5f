/** A scale bent at its knots: pairs that rise in both numbers. */
export type Knot = readonly [from: number, to: number];

/** Along straight lines from knot to knot; the outer two lines go on for ever. */
export function throughKnots(knots: readonly Knot[], value: number): number {
  return along(knots, value, 0, 1);
}

/** The other way. */
export function backThroughKnots(knots: readonly Knot[], value: number): number {
  return along(knots, value, 1, 0);
}

function along(knots: readonly Knot[], value: number, from: 0 | 1, to: 0 | 1): number {
  let upper = 1;
  while (upper < knots.length - 1 && (knots[upper]?.[from] ?? value) < value) upper += 1;
  const low = knots[upper - 1];
  const high = knots[upper];
  if (low === undefined || high === undefined) return value;
  return low[to] + ((value - low[from]) / (high[from] - low[from])) * (high[to] - low[to]);
}
