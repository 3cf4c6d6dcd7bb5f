/** From one place to another along a line, px. */
export type Stretch = readonly [from: number, to: number];

/**
 * What is left of a line that steps over what stands on it.
 *
 * @param line - From lower to higher.
 * @param covers - Stretches it leaves out, in any order.
 */
export function uncovered([from, to]: Stretch, covers: readonly Stretch[]): readonly Stretch[] {
  const left: Stretch[] = [];
  let at = from;
  for (const [begin, end] of [...covers].sort((one, other) => one[0] - other[0])) {
    if (begin > at) left.push([at, Math.min(begin, to)]);
    at = Math.max(at, end);
    if (at >= to) return left;
  }
  return [...left, [at, to]];
}
