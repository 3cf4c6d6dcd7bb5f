// `npm run --silent plan -- FILE`: the built command line, run in the folder one typed it in
// (npm moves to the root and leaves that folder in INIT_CWD).

import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const program = fileURLToPath(new URL('../dist/vitrose-plan.js', import.meta.url));

if (!existsSync(program)) {
  console.error('Nothing is built yet. Run npm start once, then this again.');
  process.exit(1);
}

const { status } = spawnSync(process.execPath, [program, ...process.argv.slice(2)], {
  cwd: process.env.INIT_CWD ?? process.cwd(),
  stdio: 'inherit',
});
process.exit(status ?? 1);
