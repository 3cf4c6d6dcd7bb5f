import type { Pedigree } from '../../foundation/numeric/pedigree.js';
import type { Profile } from './types.js';

/** Reducing power of chains of one, two and three units, dextrose = 100. */
export type ReducingEnds = Pedigree & { readonly ends: readonly [number, number, number] };

/** One end each, by molar mass. */
export const THEORY_REDUCING_ENDS = {
  source: 'definition',
  grade: 'derived',
  ends: [100, 52.63, 35.71],
} as const satisfies ReducingEnds;

/** What the copper method makes of them: about a tenth more for the longer ones. */
export const COPPER_REDUCING_ENDS = {
  source: 'pancoast-junk-1980',
  grade: 'memory',
  ends: [100, 58, 39.5],
} as const satisfies ReducingEnds;

/** Reducing power of the short chains of a syrup, dextrose = 100. */
export function shortChainEnds(
  { dp1, dp2, dp3 }: Profile,
  { ends: [e1, e2, e3] }: ReducingEnds,
): number {
  return dp1 * e1 + dp2 * e2 + dp3 * e3;
}
