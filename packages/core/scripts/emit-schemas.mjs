// Writes schemas/*.json from the shapes of the documents. The files are committed, so that editors
// and other languages find them without a build; a test holds them against a fresh emission.

import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'tsup';

const core = fileURLToPath(new URL('../', import.meta.url));
const LINE_WIDTH = 100;

/** JSON as the formatter of this repository leaves it: a list on one line where it fits. */
function printed(value, indent = '', taken = 0) {
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const inner = `${indent}  `;
  if (Array.isArray(value)) {
    const line = `[${value.map((item) => JSON.stringify(item)).join(', ')}]`;
    const isFlat = value.every((item) => typeof item !== 'object');
    if (isFlat && indent.length + taken + line.length <= LINE_WIDTH) return line;
    return `[\n${value.map((item) => inner + printed(item, inner)).join(',\n')}\n${indent}]`;
  }
  const fields = Object.entries(value).map(([key, held]) => {
    const start = `${JSON.stringify(key)}: `;
    // One more for the comma that may follow.
    return inner + start + printed(held, inner, start.length + 1);
  });
  return fields.length === 0 ? '{}' : `{\n${fields.join(',\n')}\n${indent}}`;
}

const folder = mkdtempSync(join(tmpdir(), 'vitrose-schemas-'));
try {
  await build({
    config: false,
    silent: true,
    entry: { schemas: join(core, 'src/documents/json-schemas.ts') },
    outDir: folder,
    outExtension: () => ({ js: '.mjs' }),
    format: 'esm',
    target: 'es2022',
    tsconfig: join(core, 'tsconfig.library.json'),
  });
  const { jsonSchemas } = await import(pathToFileURL(join(folder, 'schemas.mjs')).href);
  for (const [name, schema] of Object.entries(jsonSchemas())) {
    writeFileSync(join(core, 'schemas', name), `${printed(schema)}\n`);
    console.log(`schemas/${name}`);
  }
} finally {
  rmSync(folder, { recursive: true });
}
