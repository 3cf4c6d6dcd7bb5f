import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** What one can import from the package. */
export const ENTRIES = ['index', 'documents', 'words', 'sources'] as const;
export type Entry = (typeof ENTRIES)[number];

/** Where the built package lies, with a trailing slash. */
export const distPath = fileURLToPath(new URL('../../packages/core/dist/', import.meta.url));

/** A file of the built package; says what to do when nothing is built yet. */
export function builtFile(name: string): string {
  const path = `${distPath}${name}`;
  if (!existsSync(path)) {
    throw new Error(`${name} is not built. Run: npx pnpm --filter vitrose build`);
  }
  return path;
}
