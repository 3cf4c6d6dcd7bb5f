// Everything `npm test` checks, in the order that finds trouble soonest, up to the first
// failure. The last step leaves its counts in reports/vitest.json.

import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';

/** Runs a command of this workspace; true when it went well. */
const run = (command) => spawnSync(command, { stdio: 'inherit', shell: true }).status === 0;

const lockfileNamesNoHost = () => {
  const lines = readFileSync('pnpm-lock.yaml', 'utf8').split('\n');
  const at = lines.findIndex((line) => line.includes('://'));
  if (at >= 0) console.error(`pnpm-lock.yaml:${at + 1} holds an address: ${lines[at].trim()}`);
  return at < 0;
};

const steps = [
  ['the lockfile names no host', lockfileNamesNoHost],
  ['lint and format', 'biome ci --colors=off --error-on-warnings'],
  ['build', 'pnpm run build:packages'],
  ['types', 'tsc && pnpm --recursive --if-present run types'],
  ['the types of the pages', 'pnpm --filter @vitrose/site run check'],
  ['build the site', 'pnpm run build:site'],
  ['every public name is documented', 'pnpm --filter vitrose run docs'],
  ['the packages are well formed', 'pnpm --recursive --if-present run pack:lint'],
  ['the types resolve for every kind of user', 'pnpm --filter vitrose run pack:types'],
  ['sizes', 'pnpm --filter vitrose run size'],
  ['nothing unused', 'knip'],
  ['tests', 'vitest run --reporter=default --reporter=json --outputFile.json=reports/vitest.json'],
];

for (const [at, [title, step]] of steps.entries()) {
  console.log(`\n── ${at + 1}/${steps.length} ${title}`);
  const passed = typeof step === 'string' ? run(step) : step();
  if (!passed) {
    const command = typeof step === 'string' ? `\nThe step was: ${step}` : '';
    console.error(`\nStopped at "${title}". What to change stands above.${command}`);
    process.exit(1);
  }
}
console.log('\nAll checks passed.');
