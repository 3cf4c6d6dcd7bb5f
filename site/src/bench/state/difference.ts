/** How long a difference stays beside a changed number. */
export const DIFFERENCE_STAYS_MS = 4_000;

/** A shown number and what it was before it began to change. */
export type Difference = {
  readonly value: number;
  readonly from: number;
  /** When the difference goes. */
  readonly until: number;
};

/** The start: a number that has not changed. */
export function unchanged(value: number): Difference {
  return { value, from: value, until: 0 };
}

/**
 * The number has become another. While a difference still shows it goes on counting from the same
 * start, so that typing 1, 14, 148 tells one difference and not three.
 */
export function moved(before: Difference, value: number, nowMs: number): Difference {
  if (value === before.value) return before;
  const from = nowMs < before.until ? before.from : before.value;
  return { value, from, until: nowMs + DIFFERENCE_STAYS_MS };
}

/** What to show now, or nothing. */
export function differenceAt(
  { value, from, until }: Difference,
  nowMs: number,
): number | undefined {
  return nowMs < until && value !== from ? value - from : undefined;
}
