import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { builtFile, distPath, type Entry } from './entries.js';

/** Bytes over the wire of an app that imports these names (or all) of one entry and no more. */
export async function bundledBytes(entry: Entry, names: readonly string[] | '*'): Promise<number> {
  const from = JSON.stringify(builtFile(`${entry}.js`));
  const contents = names === '*' ? `export * from ${from};` : `export { ${names} } from ${from};`;
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: distPath },
    bundle: true,
    write: false,
    minify: true,
    format: 'esm',
    target: 'es2022',
    logLevel: 'error',
  });
  const [bundle] = outputFiles;
  if (bundle === undefined) throw new Error(`${entry} bundled to nothing`);
  return gzipSync(bundle.contents, { level: 9 }).length;
}
