import { existsSync, mkdirSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { distPath, ENTRIES } from './entries.js';
import { publicTypes, withoutComments } from './public-types.js';

// A changed signature shows in review as a changed line of golden/. When it is meant:
//   UPDATE_GOLDEN=1 npx vitest run tests/surface/public-types.test.ts
const golden = fileURLToPath(new URL('./golden/', import.meta.url));
const update = process.env.UPDATE_GOLDEN === '1';

describe('the public types', () => {
  const types = publicTypes();

  it.each(ENTRIES)('of %s are the ones agreed on', (entry) => {
    const path = `${golden}${entry}.txt`;
    const text = types.get(entry) ?? '';
    if (update) {
      mkdirSync(golden, { recursive: true });
      writeFileSync(path, text);
    }
    expect(existsSync(path), `${entry}.txt is missing: run with UPDATE_GOLDEN=1`).toBe(true);
    expect(text).toBe(readFileSync(path, 'utf8'));
  });

  it('name no type of the schema library', () => {
    const files = readdirSync(distPath).filter((name) => /\.d\.c?ts$/.test(name));
    expect(files.length).toBeGreaterThanOrEqual(2 * ENTRIES.length);
    const naming = files.filter((name) =>
      /zod/i.test(withoutComments(name, readFileSync(`${distPath}${name}`, 'utf8'))),
    );
    expect(naming).toEqual([]);
  });

  it('would be caught naming one', () => {
    const text = `/** Checked by zod. */\nimport { ZodMiniType } from 'zod/mini';\n`;
    expect(withoutComments('planted.d.ts', text)).toMatch(/zod/i);
    expect(withoutComments('planted.d.ts', '/** Checked by zod. */\nexport {};')).not.toMatch(
      /zod/i,
    );
  });
});
