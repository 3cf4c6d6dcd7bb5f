import { posix } from 'node:path';
import type { CoreFile } from './core-files.js';
import { type Import, importsOf } from './imports-of.js';

type Place = { readonly storey: string; readonly topic: string };

/** What each storey may stand on, itself apart. */
const STANDS_ON: Readonly<Record<string, readonly string[]>> = {
  index: ['job', 'models', 'matter', 'foundation'],
  documents: ['job', 'models', 'matter', 'foundation'],
  words: ['job', 'models', 'matter', 'foundation'],
  job: ['models', 'matter', 'foundation'],
  models: ['matter', 'foundation'],
  matter: ['foundation'],
  foundation: [],
  sources: [],
};

/** Within these two storeys every topic stands alone, but for the arrows listed. */
const SIDEWAYS: Readonly<Record<string, Readonly<Record<string, readonly string[]>>>> = {
  models: {
    stages: ['boiling'],
    heat: ['boiling'],
    moisture: ['boiling', 'glass'],
    graining: ['moisture', 'glass'],
    inversion: ['density'],
  },
  matter: {
    acids: ['mixture', 'species'],
    air: ['water'],
    mixture: ['ingredients', 'saccharides', 'species'],
    ingredients: ['saccharides', 'species'],
    saccharides: ['species'],
  },
};

function placeOf(path: string): Place {
  const [storey = '', topic = ''] = path.replace(/\.ts$/, '').split('/');
  return { storey, topic };
}

function isAllowed(from: Place, to: Place, typeOnly: boolean): boolean {
  if (to.storey === 'sources' && from.storey !== 'sources') return typeOnly;
  if (from.storey !== to.storey) return STANDS_ON[from.storey]?.includes(to.storey) ?? false;
  const sideways = SIDEWAYS[from.storey];
  if (sideways === undefined || from.topic === to.topic) return true;
  return sideways[from.topic]?.includes(to.topic) ?? false;
}

function wrongWith(file: CoreFile, one: Import, known: ReadonlySet<string>): string | undefined {
  const arrow = `${file.path} → ${one.specifier}`;
  if (one.star) return `${arrow}: name what is exported`;
  if (!one.specifier.startsWith('.')) return `${arrow}: the library imports no package`;
  const target = targetOf(file, one);
  if (!known.has(target)) return `${arrow}: no such file`;
  if (isAllowed(placeOf(file.path), placeOf(target), one.typeOnly)) return undefined;
  return `${arrow}: arrows only go down`;
}

function targetOf(file: CoreFile, one: Import): string {
  return posix.join(posix.dirname(file.path), one.specifier).replace(/\.js$/, '.ts');
}

/** Every import that breaks the order of the storeys, as a sentence. */
export function wrongArrows(files: readonly CoreFile[]): readonly string[] {
  const known = new Set(files.map((file) => file.path));
  return files.flatMap((file) =>
    importsOf(file).flatMap((one) => wrongWith(file, one, known) ?? []),
  );
}

/** A ring of files that import each other's values, or `undefined` where there is none. */
export function ringOfImports(files: readonly CoreFile[]): readonly string[] | undefined {
  const targets = new Map(
    files.map((file) => [
      file.path,
      importsOf(file)
        .filter((one) => !one.typeOnly && one.specifier.startsWith('.'))
        .map((one) => targetOf(file, one)),
    ]),
  );
  const finished = new Set<string>();
  const walk = (path: string, trail: readonly string[]): readonly string[] | undefined => {
    const seenAt = trail.indexOf(path);
    if (seenAt >= 0) return [...trail.slice(seenAt), path];
    if (finished.has(path)) return undefined;
    for (const next of targets.get(path) ?? []) {
      const ring = walk(next, [...trail, path]);
      if (ring !== undefined) return ring;
    }
    finished.add(path);
    return undefined;
  };
  for (const file of files) {
    const ring = walk(file.path, []);
    if (ring !== undefined) return ring;
  }
  return undefined;
}
