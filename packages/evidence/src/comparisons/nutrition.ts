import type { Comparison } from './types.js';

/** The library against the nutrition tables. */
export const NUTRITION_COMPARISONS: readonly Comparison[] = [];
