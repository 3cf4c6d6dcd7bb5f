// Serves the built site as a host would: under its base path, gzipped, 404 for what is not there.
//   node site/scripts/serve.mjs [--port N]
// Browser tests use `serveSite`.

import { createReadStream, existsSync, statSync } from 'node:fs';
import { createServer } from 'node:http';
import { extname, join, normalize, sep } from 'node:path';
import { fileURLToPath } from 'node:url';
import { createGzip } from 'node:zlib';

const DIST = fileURLToPath(new URL('../dist', import.meta.url));

const TYPES = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.md': 'text/markdown; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.txt': 'text/plain; charset=utf-8',
  '.wasm': 'application/wasm',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.webp': 'image/webp',
  '.png': 'image/png',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
};

const COMPRESSED = /^(text|application\/(javascript|json|manifest|xml)|image\/svg)/;

/** The base path the site was built for. */
export const siteBase = () => `/${process.env.VITROSE_BASE ?? ''}/`.replace(/\/{2,}/g, '/');

/** The file a path of the site stands for, or nothing; never one outside the folder. */
function fileFor(root, path) {
  const inside = normalize(join(root, path));
  if (inside !== root && !inside.startsWith(root + sep)) return undefined;
  if (!existsSync(inside)) return undefined;
  if (!statSync(inside).isDirectory()) return inside;
  const index = join(inside, 'index.html');
  return existsSync(index) ? index : undefined;
}

/**
 * Starts serving; port 0 is any free one.
 *
 * @returns the address, with its base path, and a function that stops it.
 */
export async function serveSite({ root = DIST, port = 0, base = siteBase() } = {}) {
  if (!existsSync(join(root, 'index.html'))) {
    throw new Error('The site is not built yet. Run `npm start` once.');
  }
  const server = createServer((request, response) => {
    let path;
    try {
      path = decodeURIComponent(new URL(request.url ?? '/', 'http://localhost').pathname);
    } catch {
      path = '';
    }
    const inBase = path.startsWith(base) ? path.slice(base.length) : undefined;
    const found = inBase === undefined ? undefined : fileFor(root, inBase);
    if (found !== undefined && !path.endsWith('/') && found.endsWith(`${sep}index.html`)) {
      response.writeHead(301, { location: `${path}/` }).end();
      return;
    }
    const file = found ?? join(root, '404.html');
    const type = TYPES[extname(file)] ?? 'application/octet-stream';
    const gzip = COMPRESSED.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
    response.writeHead(found === undefined ? 404 : 200, {
      'content-type': type,
      'cache-control': 'no-cache',
      vary: 'accept-encoding',
      ...(gzip ? { 'content-encoding': 'gzip' } : {}),
    });
    if (request.method === 'HEAD' || !existsSync(file)) {
      response.end();
      return;
    }
    const bytes = createReadStream(file);
    if (gzip) bytes.pipe(createGzip()).pipe(response);
    else bytes.pipe(response);
  });
  await new Promise((resolve, reject) => {
    server.once('error', reject);
    server.listen(port, '127.0.0.1', resolve);
  });
  return {
    address: `http://localhost:${server.address().port}${base}`,
    stop: () =>
      new Promise((resolve) => {
        server.closeAllConnections();
        server.close(resolve);
      }),
  };
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const at = process.argv.indexOf('--port');
  const { address, stop } = await serveSite({ port: at < 0 ? 0 : Number(process.argv[at + 1]) });
  console.log(`\nThe site is at ${address}\nCtrl+C stops it.`);
  for (const signal of ['SIGINT', 'SIGTERM']) {
    process.once(signal, () => void stop().then(() => process.exit(0)));
  }
}
