import type { Comparison } from './types.js';

/** The library against the density tables. */
export const DENSITY_COMPARISONS: readonly Comparison[] = [];
