import { mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { expect } from 'vitest';

const folder = new URL('golden/', import.meta.url);

/**
 * Holds a text against the one that was read and approved. After a change that is meant, write the
 * texts anew with `UPDATE_GOLDEN=1` and read the difference as the cook would.
 */
export function expectGolden(name: string, text: string): void {
  const file = new URL(`${name}.txt`, folder);
  if (process.env.UPDATE_GOLDEN === '1') {
    mkdirSync(folder, { recursive: true });
    writeFileSync(file, text);
  }
  expect(text).toBe(readFileSync(file, 'utf8'));
}

/** The texts there are, to find those that belong to nothing any more. */
export function goldenNames(): readonly string[] {
  return readdirSync(folder).map((file) => file.replace(/\.txt$/, ''));
}
