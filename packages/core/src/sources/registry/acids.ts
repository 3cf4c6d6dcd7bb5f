import type { Source } from '../types.js';

/** Sources of acid: dissociation, inversion, browning, sourness. */
export const ACID_SOURCES = {} as const satisfies Readonly<Record<string, Source>>;
