import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, it } from 'vitest';
import { jsonSchemas } from './json-schemas.js';

const folder = fileURLToPath(new URL('../../schemas/', import.meta.url));

it.each(Object.keys(jsonSchemas()))(
  'schemas/%s is what the shapes say; if not, run: npx pnpm --filter vitrose run schemas',
  (name) => {
    const fresh = JSON.stringify(jsonSchemas()[name]);
    expect(JSON.stringify(JSON.parse(readFileSync(`${folder}${name}`, 'utf8')))).toBe(fresh);
  },
);

it('no schema is left over from a document that is gone', () => {
  expect(Object.keys(jsonSchemas())).toEqual(expect.arrayContaining(readdirSync(folder)));
});
