import type { Source } from '../types.js';

/** Sources of moisture: sorption, films, viscosity. */
export const MOISTURE_SOURCES = {} as const satisfies Readonly<Record<string, Source>>;
