import { createHash } from 'node:crypto';
import { readdir, readFile, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** Writes a strict policy into every page, with the hash of each script that stands inside it. */
export function contentSecurityPolicy(): AstroIntegration {
  return {
    name: 'content-security-policy',
    hooks: {
      'astro:build:done': async ({ dir, logger }) => {
        const root = fileURLToPath(dir);
        const entries = await readdir(root, { recursive: true });
        const pages = entries.filter((path) => path.endsWith('.html'));
        await Promise.all(
          pages.map(async (path) => {
            const file = join(root, path);
            await writeFile(file, withPolicy(await readFile(file, 'utf8')));
          }),
        );
        logger.info(`${pages.length} pages carry their policy`);
      },
    },
  };
}

/** A page with its policy right after the character set, before anything that could run. */
export function withPolicy(html: string): string {
  const policy = [
    `default-src 'none'`,
    // Search is WebAssembly.
    ["script-src 'self' 'wasm-unsafe-eval'", ...hashesOfScripts(html)].join(' '),
    // Code blocks carry their colours in style attributes.
    `style-src 'self' 'unsafe-inline'`,
    `img-src 'self' data: blob:`,
    `font-src 'self'`,
    `connect-src 'self'`,
    `worker-src 'self'`,
    `manifest-src 'self'`,
    `frame-src 'self'`,
    `base-uri 'none'`,
    `form-action 'none'`,
  ].join('; ');
  const meta = `<meta http-equiv="Content-Security-Policy" content="${policy}">`;
  const placed = html.replace(/<meta charset="?utf-8"?\s*\/?>/i, (charset) => `${charset}${meta}`);
  if (placed === html) throw new Error('A page states no character set, so it has no policy.');
  return placed;
}

/** Hashes of the scripts written into a page; data in a script element does not run. */
function hashesOfScripts(html: string): readonly string[] {
  const hashes = new Set<string>();
  for (const [, attributes = '', body = ''] of html.matchAll(
    /<script\b([^>]*)>([\s\S]*?)<\/script>/gi,
  )) {
    if (/\bsrc\s*=/i.test(attributes) || /type\s*=\s*["']?application\//i.test(attributes))
      continue;
    if (body === '') continue;
    hashes.add(`'sha256-${createHash('sha256').update(body).digest('base64')}'`);
  }
  return [...hashes];
}
