/** How many slips of the finger still mean the same word. */
const MOST_SLIPS = 2;

/** The word one may have meant: nearest by slips, or the only one that begins like it. */
export function nearest(typed: string, words: readonly string[]): string | undefined {
  const [best] = words
    .map((word) => ({ word, slips: slipsBetween(typed, word) }))
    .filter(({ word, slips }) => slips <= MOST_SLIPS && slips < word.length - 1)
    .sort((a, b) => a.slips - b.slips);
  if (best !== undefined) return best.word;
  const [only, second] = typed === '' ? [] : words.filter((word) => word.startsWith(typed));
  return second === undefined ? only : undefined;
}

/** Letters to add, drop or change to make one word of the other, row by row. */
function slipsBetween(a: string, b: string): number {
  let above = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (const [row, letter] of [...a].entries()) {
    const here = [row + 1];
    for (const [column, other] of [...b].entries()) {
      const change = (above[column] ?? 0) + (letter === other ? 0 : 1);
      here.push(Math.min(change, (above[column + 1] ?? 0) + 1, (here[column] ?? 0) + 1));
    }
    above = here;
  }
  return above[b.length] ?? 0;
}
