/**
 * How many slips of the finger lie between two words: a letter too many, too few, wrong, or two
 * neighbours swapped (restricted Damerau–Levenshtein distance).
 */
export function editDistance(a: string, b: string): number {
  let twoBack: number[] = [];
  let oneBack: number[] = [];
  let row = Array.from({ length: b.length + 1 }, (_, column) => column);
  for (let i = 1; i <= a.length; i++) {
    twoBack = oneBack;
    oneBack = row;
    row = [i];
    for (let j = 1; j <= b.length; j++) {
      const wrong = a[i - 1] === b[j - 1] ? 0 : 1;
      const swapped = i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1];
      row[j] = Math.min(
        (oneBack[j] ?? 0) + 1,
        (row[j - 1] ?? 0) + 1,
        (oneBack[j - 1] ?? 0) + wrong,
        swapped ? (twoBack[j - 2] ?? 0) + 1 : Infinity,
      );
    }
  }
  return row[b.length] ?? 0;
}
