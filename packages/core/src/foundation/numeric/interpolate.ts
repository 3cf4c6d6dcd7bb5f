/** A point of a curve: where, and how high. */
export type Point = readonly [x: number, y: number];

/**
 * Height of a curve drawn with a ruler through points.
 *
 * Beyond the first and the last point the end pieces go straight on; a caller that wants the end
 * held adds a point of the same height.
 *
 * @param points - Two or more points, in the order of their `x`.
 * @param x - Where to read.
 * @returns the height there.
 */
export function interpolate(
  points: readonly [Point, Point, ...(readonly Point[])],
  x: number,
): number {
  let [from, to] = points;
  for (const next of points) {
    if (next[0] > to[0] && to[0] < x) {
      from = to;
      to = next;
    }
  }
  return from[1] + ((x - from[0]) * (to[1] - from[1])) / (to[0] - from[0]);
}
