import { spawnSync } from 'node:child_process';
import { copyFileSync, mkdirSync, mkdtempSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, expect, it } from 'vitest';

const original = fileURLToPath(new URL('../../packages/cli/scripts/plan.mjs', import.meta.url));
const folder = realpathSync(mkdtempSync(join(tmpdir(), 'vitrose-script-')));
const script = join(folder, 'scripts/plan.mjs');
mkdirSync(join(folder, 'scripts'));
copyFileSync(original, script);
afterAll(() => rmSync(folder, { recursive: true }));

/** `npm run plan -- FILE` moves to the root and leaves the folder one was in behind. */
const ran = (args: readonly string[], typedIn: string) =>
  spawnSync(process.execPath, [script, ...args], {
    encoding: 'utf8',
    env: { ...process.env, INIT_CWD: typedIn },
  });

it('says what to do first when nothing is built', () => {
  const { status, stderr } = ran(['batch.json'], folder);
  expect(stderr).toContain('npm start');
  expect(stderr).not.toContain('    at ');
  expect(status).not.toBe(0);
});

it('runs where the command was typed, hands every argument on and gives the exit code back', () => {
  mkdirSync(join(folder, 'dist'));
  mkdirSync(join(folder, 'kitchen'));
  writeFileSync(
    join(folder, 'dist/vitrose-plan.js'),
    'console.log(process.cwd(), ...process.argv.slice(2)); process.exitCode = 2;',
  );
  const { status, stdout } = ran(['a b.json', '--units', 'us'], join(folder, 'kitchen'));
  expect(stdout).toBe(`${join(folder, 'kitchen')} a b.json --units us\n`);
  expect(status).toBe(2);
});
