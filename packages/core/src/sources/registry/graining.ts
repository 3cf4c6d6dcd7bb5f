import type { Source } from '../types.js';

/** Sources of graining: solubility, supersaturation, crystal growth. */
export const GRAINING_SOURCES = {} as const satisfies Readonly<Record<string, Source>>;
