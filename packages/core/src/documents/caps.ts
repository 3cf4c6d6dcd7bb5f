/**
 * How much of a document is read at all: its size as UTF-8, how deep it nests, and how many lines
 * its formula has. A recipe keeps far below; what does not is no recipe.
 */
export const DOCUMENT_CAPS = { bytes: 256_000, depth: 12, lines: 200 } as const;
