import type { Source } from '../types.js';

/** Sources of heat: specific and latent heat, hobs, cooling. */
export const HEAT_SOURCES = {} as const satisfies Readonly<Record<string, Source>>;
