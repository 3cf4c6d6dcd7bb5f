import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { vi } from 'vitest';

const folder = new URL('../../examples/programs/', import.meta.url);

/** Every program among the examples, by the name of its file. */
export const PROGRAMS: readonly string[] = readdirSync(folder)
  .map((file) => file.replace(/\.mjs$/, ''))
  .sort();

/** Runs a program and gives back what it prints. */
export async function outputOf(name: string, ...args: readonly string[]): Promise<string> {
  const path = fileURLToPath(new URL(`${name}.mjs`, folder));
  const { argv } = process;
  const lines: string[] = [];
  const log = vi.spyOn(console, 'log').mockImplementation((line: string) => {
    lines.push(line);
  });
  process.argv = [process.execPath, path, ...args];
  vi.resetModules();
  try {
    await import(path);
  } finally {
    process.argv = argv;
    log.mockRestore();
  }
  return lines.map((line) => `${line}\n`).join('');
}
