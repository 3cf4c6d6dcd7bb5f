import type { Source } from '../types.js';

/** Sources of taste: concentration, temperature, boosters. */
export const TASTE_SOURCES = {} as const satisfies Readonly<Record<string, Source>>;
