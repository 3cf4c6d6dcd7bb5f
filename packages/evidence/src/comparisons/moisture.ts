import type { Comparison } from './types.js';

/** The library against the moisture tables. */
export const MOISTURE_COMPARISONS: readonly Comparison[] = [];
