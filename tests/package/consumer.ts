import { execFileSync, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const repository = fileURLToPath(new URL('../../', import.meta.url));

/** How a command ended. */
export type Ended = {
  readonly status: number | null;
  readonly stdout: string;
  readonly stderr: string;
};

/** Runs node in a folder. */
export function node(cwd: string, args: readonly string[]): Ended {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { cwd, encoding: 'utf8' });
  return { status, stdout, stderr };
}

/** A folder of someone who has never seen this workspace. */
export function freshFolder(): { readonly path: string; readonly remove: () => void } {
  const path = mkdtempSync(join(tmpdir(), 'vitrose-package-'));
  return { path, remove: () => rmSync(path, { recursive: true, force: true }) };
}

/** Writes a project's files, its folders included. */
export function writeProject(folder: string, files: Readonly<Record<string, string>>): string {
  mkdirSync(folder, { recursive: true });
  for (const [name, text] of Object.entries(files)) writeFileSync(join(folder, name), text);
  return folder;
}

/** Packs a package as it would be published: `workspace:*` becomes a version. */
function pack(packageFolder: string, destination: string): string {
  mkdirSync(destination, { recursive: true });
  const cwd = join(repository, packageFolder);
  const pnpm = process.env.npm_execpath ?? '';
  const args = ['pack', '--pack-destination', destination];
  if (/pnpm\.c?js$/.test(pnpm)) {
    execFileSync(process.execPath, [pnpm, ...args], { cwd, stdio: 'pipe' });
  } else {
    // Outside `pnpm run`, where a single test file is run by hand.
    const { packageManager } = JSON.parse(readFileSync(join(repository, 'package.json'), 'utf8'));
    execFileSync('npx', ['--yes', packageManager, ...args], { cwd, stdio: 'pipe' });
  }
  const [tarball] = readdirSync(destination);
  if (tarball === undefined) throw new Error(`${packageFolder} packed to nothing`);
  return join(destination, tarball);
}

/** Installs a package into a project by unpacking its tarball, with no network in it. */
export function installPacked(packageFolder: string, name: string, project: string): string {
  const folder = join(project, 'node_modules', name);
  mkdirSync(folder, { recursive: true });
  const tarball = pack(packageFolder, join(project, 'tarballs', name));
  execFileSync('tar', ['-xzf', tarball, '-C', folder, '--strip-components=1']);
  return folder;
}
