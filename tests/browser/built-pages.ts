import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

/** Every page of the built site, as a path under its address; none while nothing is built. */
export function builtPages(): readonly string[] {
  const dist = fileURLToPath(new URL('../../site/dist', import.meta.url));
  let files: readonly string[];
  try {
    files = readdirSync(dist, { recursive: true }).map(String);
  } catch {
    return [];
  }
  return files
    .map((file) => file.replaceAll('\\', '/'))
    .filter((file) => file.endsWith('.html'))
    .map((file) => file.replace(/index\.html$/, ''))
    .sort();
}
