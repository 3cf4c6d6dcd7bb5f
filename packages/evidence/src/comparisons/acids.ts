import type { Comparison } from './types.js';

/** The library against the acids tables. */
export const ACID_COMPARISONS: readonly Comparison[] = [];
