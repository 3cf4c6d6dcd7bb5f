import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { freshFolder, installPacked, node, writeProject } from './consumer.js';

const entries = ['vitrose', 'vitrose/documents', 'vitrose/words', 'vitrose/sources'];
const tsc = createRequire(import.meta.url).resolve('typescript/bin/tsc');
const batch = fileURLToPath(
  new URL('../../examples/batches/harbour-lemon-drops.json', import.meta.url),
);

const home = freshFolder();
let library = '';
let commandLine = '';

beforeAll(() => {
  library = installPacked('packages/core', 'vitrose', home.path);
  commandLine = installPacked('packages/cli', '@vitrose/cli', home.path);
});
afterAll(home.remove);

const manifest = (folder: string) => JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));

/** A program that prints the names of every entry, and one answer. */
const program = (load: (entry: string) => string): string => `
  const names = {
    ${entries.map((entry) => `'${entry}': Object.keys(${load(entry)}).sort(),`).join('\n')}
  };
  const { standardPressure } = ${load('vitrose')};
  const { pressurePa } = standardPressure(0);
  console.log(JSON.stringify({ names, pressurePa }));
`;

describe('the packed library', () => {
  it('holds what is used and nothing else', () => {
    expect(readdirSync(library).sort()).toEqual([
      'LICENSE',
      'README.md',
      'dist',
      'package.json',
      'schemas',
    ]);
    expect(readdirSync(join(library, 'dist')).filter((name) => name.includes('.test.'))).toEqual(
      [],
    );
  });

  it('asks for no other package', () => {
    const { dependencies, peerDependencies, optionalDependencies } = manifest(library);
    expect({ ...dependencies, ...peerDependencies, ...optionalDependencies }).toEqual({});
  });

  it('answers alike to import and to require', () => {
    const esm = node(
      writeProject(join(home.path, 'esm'), {
        'package.json': '{ "type": "module" }',
        'main.js': program((entry) => `(await import('${entry}'))`),
      }),
      ['main.js'],
    );
    const cjs = node(
      writeProject(join(home.path, 'cjs'), {
        'package.json': '{ "type": "commonjs" }',
        'main.js': program((entry) => `require('${entry}')`),
      }),
      ['main.js'],
    );
    expect(esm.stderr).toBe('');
    expect(cjs.stderr).toBe('');
    const { names, pressurePa } = JSON.parse(esm.stdout);
    expect(JSON.parse(cjs.stdout)).toEqual({ names, pressurePa });
    expect(pressurePa).toBe(101_325);
    for (const entry of entries) expect(names[entry].length, entry).toBeGreaterThan(0);
  });

  it.each([
    ['module', 'an ES module'],
    ['commonjs', 'a CommonJS one'],
  ])('compiles in a strict TypeScript project of type %s: %s', (type) => {
    const project = writeProject(join(home.path, `typescript-${type}`), {
      'package.json': JSON.stringify({ type }),
      'tsconfig.json': JSON.stringify({
        compilerOptions: {
          module: 'nodenext',
          target: 'es2022',
          lib: ['es2022'],
          types: [],
          strict: true,
          exactOptionalPropertyTypes: true,
          noUncheckedIndexedAccess: true,
          skipLibCheck: false,
          noEmit: true,
        },
        files: ['main.ts'],
      }),
      'main.ts': `
        import { standardPressure } from 'vitrose';
        import * as documents from 'vitrose/documents';
        import * as words from 'vitrose/words';
        import * as sources from 'vitrose/sources';
        export const pressurePa: number = standardPressure(0).pressurePa;
        // @ts-expect-error an elevation is a number
        standardPressure('high');
        export const all: readonly object[] = [documents, words, sources];
      `,
    });
    const { status, stdout } = node(project, [tsc, '-p', '.']);
    expect(stdout).toBe('');
    expect(status).toBe(0);
  });

  it('gives its schemas by name', () => {
    const schemas = readdirSync(join(library, 'schemas'));
    expect(schemas).toContain('batch.json');
    const project = writeProject(join(home.path, 'schemas'), {
      'main.cjs': `console.log(require('vitrose/schemas/batch.json').$id)`,
    });
    expect(node(project, ['main.cjs']).stdout.trim()).toBe('urn:vitrose:batch:1');
  });
});

describe('the packed command line', () => {
  const run = (...args: readonly string[]) => {
    const { bin } = manifest(commandLine);
    return node(home.path, [join(commandLine, bin['vitrose-plan']), ...args]);
  };

  it('asks for the library by its version, and nothing else', () => {
    expect(manifest(commandLine).dependencies).toEqual({ vitrose: manifest(library).version });
  });

  it('begins with the line that lets a shell run it', () => {
    const { bin } = manifest(commandLine);
    const text = readFileSync(join(commandLine, bin['vitrose-plan']), 'utf8');
    expect(text.startsWith('#!/usr/bin/env node\n')).toBe(true);
  });

  it('prints the plan of an example for people', () => {
    expect(existsSync(batch)).toBe(true);
    const { status, stdout, stderr } = run(batch);
    expect(stderr).toBe('');
    expect(status).toBe(0);
    expect(stdout).toContain('Stop at');
  });

  it('prints the same plan for programs', () => {
    const { status, stdout } = run(batch, '--json');
    expect(status).toBe(0);
    expect(JSON.parse(stdout).format).toBe('vitrose.plan/1');
  });

  it('says which file it could not find, and fails', () => {
    const { status, stderr } = run('no-such-batch.json');
    expect(status).not.toBe(0);
    expect(stderr).toContain('no-such-batch.json');
  });
});
