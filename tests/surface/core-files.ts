import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** A source file of the library. */
export type CoreFile = {
  /** Path below packages/core/src, with forward slashes. */
  readonly path: string;
  readonly text: string;
};

const root = fileURLToPath(new URL('../../packages/core/src/', import.meta.url));

/** Every shipped file of packages/core/src; the unit tests beside them, and what only they use, are left out. */
export function coreFiles(): readonly CoreFile[] {
  return readdirSync(root, { recursive: true, encoding: 'utf8' })
    .map((path) => path.replaceAll('\\', '/'))
    .filter((path) => path.endsWith('.ts') && !/\.(test|fixture)\.ts$/.test(path))
    .sort()
    .map((path) => ({ path, text: readFileSync(`${root}${path}`, 'utf8') }));
}
