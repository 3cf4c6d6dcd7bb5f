// biome-ignore-all format: one printed row a line

import type { Grade } from '../../foundation/validity/constants.js';
import type { SourceId } from '../../sources/ids.js';
import type { Conversion } from './types.js';

/** A typical syrup, as a printed table gives it: mass shares of its dry substance by chain length. */
export type ProfileRow = readonly [
  dextroseEquivalent: number,
  dp1: number,
  dp2: number,
  dp3: number,
  dp4plus: number,
  source: SourceId,
  grade: Grade,
];

/** Two or more syrups of one kind, in the order of their dextrose equivalent. */
export type ProfileRows = readonly [ProfileRow, ProfileRow, ...ProfileRow[]];

// Makers differ by about 2 points either way.
/** Acid-converted syrups. Of 42 DE the split is seen in print; of 55 DE it is recalled. */
export const ACID_PROFILES = [
  [30, 0.1, 0.09, 0.09, 0.72, 'belitz-2009', 'primary'],
  [42, 0.185, 0.139, 0.116, 0.56, 'baines-seal-2012', 'secondary'],
  [55, 0.308, 0.181, 0.132, 0.379, 'pancoast-junk-1980', 'memory'],
  [60, 0.36, 0.2, 0.13, 0.31, 'belitz-2009', 'primary'],
] as const satisfies ProfileRows;

/** Enzyme-converted syrups; the dash the source prints for DP3 at 97 DE is read as none. */
export const ENZYME_PROFILES = [
  [45, 0.05, 0.5, 0.2, 0.25, 'belitz-2009', 'primary'],
  [65, 0.39, 0.35, 0.11, 0.15, 'belitz-2009', 'primary'],
  [97, 0.96, 0.02, 0, 0.02, 'belitz-2009', 'primary'],
] as const satisfies ProfileRows;

/** The one high-maltose syrup there are figures for. */
export const HIGH_MALTOSE_PROFILE = [
  43,
  0.055,
  0.462,
  0.123,
  0.36,
  'vink-hard-candy',
  'secondary',
] as const satisfies ProfileRow;

/** Dextrose equivalents each way of cutting starch can reach. */
export const CONVERSION_DEXTROSE_EQUIVALENTS = {
  acid: [20, 63],
  enzyme: [45, 97],
  'high-maltose': [40, 50],
} as const satisfies Readonly<Record<Conversion, readonly [number, number]>>;
