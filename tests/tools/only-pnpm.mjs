// Runs before every install. Plain npm would install the root alone and leave a
// second lockfile behind, so it is stopped here with the command that works.

import { readFileSync } from 'node:fs';

const agent = process.env.npm_config_user_agent ?? '';

if (!agent.startsWith('pnpm/')) {
  const manifest = readFileSync(new URL('../../package.json', import.meta.url), 'utf8');
  console.error(`
This workspace is installed with pnpm (10.26 or newer), which you need not have:

  npm start    installs, builds and prints a plan
  npm test     installs, builds and checks everything

To install only:  npx --yes ${JSON.parse(manifest).packageManager} install --frozen-lockfile
`);
  process.exit(1);
}
