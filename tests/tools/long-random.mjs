// The tests that draw random documents, with many more draws than `npm test` makes. They are
// found by the variable they read; the report goes to reports/long-random.json.

import { spawnSync } from 'node:child_process';
import { readdirSync, readFileSync } from 'node:fs';

const variable = 'VITROSE_FUZZ_RUNS';
const files = readdirSync('tests', { recursive: true, encoding: 'utf8' })
  .map((name) => `tests/${name.replaceAll('\\', '/')}`)
  .filter(
    (path) =>
      !path.includes('node_modules/') &&
      path.endsWith('.test.ts') &&
      readFileSync(path, 'utf8').includes(variable),
  );

if (files.length === 0) {
  console.error(`No test reads ${variable}.`);
  process.exit(1);
}

const runs = process.env[variable] ?? '100000';
console.log(`\n── ${runs} random documents`);
const command = [
  'vitest run --testTimeout=1800000',
  '--reporter=default --reporter=json --outputFile.json=reports/long-random.json',
  ...files,
].join(' ');
const { status } = spawnSync(command, {
  stdio: 'inherit',
  shell: true,
  env: { ...process.env, [variable]: runs },
});
process.exit(status ?? 1);
