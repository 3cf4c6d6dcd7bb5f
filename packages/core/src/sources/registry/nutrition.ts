import type { Source } from '../types.js';

/** Sources of the food label: energy, claims, guides. */
export const NUTRITION_SOURCES = {} as const satisfies Readonly<Record<string, Source>>;
