import { spawn } from 'node:child_process';
import { once } from 'node:events';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { DROPS } from './memory-io.js';

const packages = fileURLToPath(new URL('../../packages/', import.meta.url));
const folder = mkdtempSync(join(tmpdir(), 'vitrose-plan-'));
const program = join(folder, 'vitrose-plan.mjs');

// The program from its sources, so that nothing has to be built before.
beforeAll(async () => {
  const core = (path: string) => join(packages, 'core/src', path);
  await build({
    entryPoints: [join(packages, 'cli/src/vitrose-plan.ts')],
    outfile: program,
    bundle: true,
    platform: 'node',
    format: 'esm',
    target: 'node20',
    alias: {
      'vitrose/documents': core('documents/index.ts'),
      'vitrose/words': core('words/index.ts'),
      vitrose: core('index.ts'),
    },
  });
});
afterAll(() => rmSync(folder, { recursive: true }));

type Told = {
  readonly stdin?: string;
  /** Closes our end of its output before it has anything to say: what `head` does, only surer. */
  readonly leaveEarly?: boolean;
  /** Keeps writing to standard input until nobody reads any more. */
  readonly flood?: boolean;
};

async function ran(args: readonly string[], { stdin = '', leaveEarly, flood }: Told = {}) {
  const child = spawn(process.execPath, [program, ...args], { cwd: folder });
  let out = '';
  let err = '';
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  if (leaveEarly) {
    child.stdout.destroy();
    await once(child.stdout, 'close');
  }
  child.stdin.on('error', () => undefined);
  if (flood) {
    const more = () => {
      while (child.stdin.writable && child.stdin.write('x'.repeat(65_536)));
    };
    child.stdin.on('drain', more);
    more();
  } else child.stdin.end(stdin);
  const [code, signal] = await once(child, 'close');
  return { code, signal, out, err };
}

describe('the program', () => {
  it('plans what comes through a pipe', async () => {
    const { code, out, err } = await ran(['-'], { stdin: DROPS });
    expect(out).toContain('Stop at');
    expect([code, err]).toEqual([0, '']);
  });

  it('ends quietly when its reader has seen enough', async () => {
    const { code, signal, err } = await ran(['-', '--json'], { stdin: DROPS, leaveEarly: true });
    expect([code, signal, err]).toEqual([0, null, '']);
  });

  it('stops reading at the cap, however much there is', async () => {
    const { code, err } = await ran(['-'], { flood: true });
    expect(err).toContain('256 kB');
    expect(code).toBe(1);
  });

  it.each([
    [['no-such-file.json'], 2],
    [['.'], 2],
    [['--unknown'], 2],
    [['-'], 1],
  ])('answers a mistake without a stack: %j', async (args, wanted) => {
    const { code, out, err } = await ran(args, { stdin: '{ "format": "vitrose.batch/1" ' });
    expect(err).not.toMatch(/^\s+at /m);
    expect(err.trim()).not.toBe('');
    expect([code, out]).toEqual([wanted, '']);
  });
});
