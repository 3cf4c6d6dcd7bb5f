import type { Change, Remedy, RemedyCode } from './types.js';

/** One way out, with the numbers its button needs. */
export function remedy(
  code: RemedyCode,
  changes: readonly Change[],
  numbers: Readonly<Record<string, number>> = {},
): Remedy {
  return { code, changes, numbers };
}
