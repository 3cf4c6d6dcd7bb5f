import type { Comparison } from './types.js';

/** The library against the heat tables. */
export const HEAT_COMPARISONS: readonly Comparison[] = [];
