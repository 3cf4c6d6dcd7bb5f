/** A thing that takes room along a line, px. */
export type Wish = { readonly middle: number; readonly size: number };

type Cluster = {
  readonly start: number;
  readonly size: number;
  readonly count: number;
};

/**
 * Moves things along a line apart until none covers another, in their order, and each as little as
 * it can: those that would meet stand side by side around the middle of their wishes.
 *
 * @param wishes - In order of their middles.
 * @param within - Nothing leaves this span, unless all together are longer than it.
 * @returns the new middles, in the same order.
 */
export function spread(
  wishes: readonly Wish[],
  [low, high]: readonly [number, number],
): readonly number[] {
  const clusters: Cluster[] = [];
  for (const { middle, size } of wishes) {
    let last: Cluster = { start: middle - size / 2, size, count: 1 };
    let before = clusters.at(-1);
    while (before !== undefined && before.start + before.size > last.start) {
      clusters.pop();
      last = joined(before, last);
      before = clusters.at(-1);
    }
    clusters.push(last);
  }
  const starts = clusters.flatMap(({ start, count }) => Array<number>(count).fill(start));
  return settled(wishes, starts, low, high);
}

/** Two neighbours as one, where the wishes of both are missed by as much in all. */
function joined(one: Cluster, other: Cluster): Cluster {
  const count = one.count + other.count;
  const start = (one.start * one.count + (other.start - one.size) * other.count) / count;
  return { start, size: one.size + other.size, count };
}

/** Lays each cluster out from its start, and keeps everything within the span. */
function settled(
  wishes: readonly Wish[],
  starts: readonly number[],
  low: number,
  high: number,
): readonly number[] {
  const begins: number[] = [];
  let end = low;
  wishes.forEach(({ size }, at) => {
    const begin = Math.max(end, starts[at] ?? end);
    begins.push(begin);
    end = begin + size;
  });
  let limit = high;
  for (let at = wishes.length - 1; at >= 0; at -= 1) {
    const size = wishes[at]?.size ?? 0;
    limit = Math.min(limit, (begins[at] ?? low) + size) - size;
    begins[at] = limit;
  }
  return begins.map((begin, at) => begin + (wishes[at]?.size ?? 0) / 2);
}
