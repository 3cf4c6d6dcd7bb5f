import { editDistance } from './edit-distance.js';

/** At most two slips; a third is another word. */
const MOST_SLIPS = 2;

/**
 * The known names one may have meant: those with the fewest slips, upper and lower case taken as
 * one. Every letter of a short word can be reached by two slips, so some of the word must be left.
 */
export function nearest(word: string, names: readonly string[]): readonly string[] {
  const typed = word.toLowerCase();
  const slips = names.map((name) => slipsBetween(typed, name.toLowerCase()));
  const fewest = Math.min(MOST_SLIPS, ...slips);
  return names.filter((_, at) => slips[at] === fewest).slice(0, 3);
}

function slipsBetween(typed: string, name: string): number {
  const shorter = Math.min(typed.length, name.length);
  // Spares the work for a name that is much too long, which may be a quarter of a megabyte.
  if (Math.abs(typed.length - name.length) > MOST_SLIPS) return Infinity;
  const slips = editDistance(typed, name);
  return slips < shorter ? slips : Infinity;
}
