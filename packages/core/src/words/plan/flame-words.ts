const FLAMES = [
  [0.2, 'a fifth'],
  [0.25, 'a quarter'],
  [0.3333, 'a third'],
  [0.5, 'half'],
  [0.6667, 'two thirds'],
  [0.75, 'three quarters'],
] as const;

/** A share of the flame as a hand can set it. */
export function flameWords(share: number): string {
  const [, words] = FLAMES.reduce((best, one) =>
    Math.abs(one[0] - share) < Math.abs(best[0] - share) ? one : best,
  );
  return words;
}
