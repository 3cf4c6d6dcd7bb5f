import type { Comparison } from './types.js';

/** The library against the graining tables. */
export const GRAINING_COMPARISONS: readonly Comparison[] = [];
