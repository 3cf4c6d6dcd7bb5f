import { pathTo, shortened } from '../../job/batch/limits.js';
import type { Problem } from '../../job/batch/problems.js';
import { nearest } from '../names/nearest.js';
import { branchesOf, fieldNames, isGroup, shapesUnder, wordsOf } from '../shape/look-at.js';
import type { Fields, Shape } from '../shape/types.js';
import { chooseBranch, requiredEverywhere, type Undecided } from './choose-branch.js';

type Held = Readonly<Record<string, unknown>>;
type Problems = readonly Problem[];

/**
 * Everything about the structure of a value that its shape does not allow, each thing once and with
 * its place. Numbers are left alone: `checkNumbers` speaks of them.
 *
 * @param shapes - What may stand here; more than one where it is open which branch is meant.
 */
export function structureProblems(
  shapes: readonly Shape[],
  value: unknown,
  path: string,
): Problems {
  const words = [...new Set(shapes.flatMap(wordsOf))];
  const branches = shapes.flatMap(branchesOf);
  if (words.length > 0 && typeof value === 'string') return wordProblems(words, value, path);
  if (branches.length > 0 && isObject(value)) return fieldProblems(branches, value, path);

  const [shape] = shapes;
  if (shape === undefined || shape === 'number') return [];
  if (typeof shape === 'string') {
    return typeof value === shape ? [] : [wrongType(value, path, [shape])];
  }
  if (isGroup(shape) && 'list' in shape) {
    return Array.isArray(value)
      ? value.flatMap((item, at) => structureProblems([shape.list], item, pathTo(path, at)))
      : [wrongType(value, path, ['array'])];
  }
  if (isGroup(shape) && 'entries' in shape) {
    return isObject(value)
      ? entryProblems(shape.names ?? [], shape.entries, value, path)
      : [wrongType(value, path, ['object'])];
  }
  return [wrongType(value, path, [...words, ...(branches.length > 0 ? ['object'] : [])])];
}

function wordProblems(words: readonly string[], value: string, path: string): Problems {
  if (words.includes(value)) return [];
  return [
    { code: 'unknown-name', path, received: shortened(value), known: nearOrAll(value, words) },
  ];
}

function entryProblems(names: readonly string[], held: Shape, value: Held, path: string): Problems {
  return Object.entries(value).flatMap(([key, entry]) => {
    const place = pathTo(path, key);
    return names.length === 0 || names.includes(key)
      ? structureProblems([held], entry, place)
      : wordProblems(names, key, place);
  });
}

function fieldProblems(all: readonly Fields[], value: Held, path: string): Problems {
  const { branches, by, undecided } = chooseBranch(all, value);
  const names = fieldNames(branches);
  const strangers = Object.keys(value).filter((key) => !names.includes(key));
  const everywhere = strangers.length === 0 ? names : fieldNames(all);

  const unknown = strangers
    .filter((key) => !everywhere.includes(key))
    .map((key) => unknownField(key, nearest(key, everywhere), path));
  const misplaced = strangers
    .filter((key) => everywhere.includes(key))
    .map((key) => ({
      ...unknownField(key, names, path),
      ...(by !== undefined && { also: pathTo(path, by) }),
    }));

  // A name that is misspelt is not missed as well: one slip, one problem.
  const misspelt = unknown.flatMap(({ known }) => known ?? []);
  const missing = requiredEverywhere(branches)
    .filter((key) => !Object.hasOwn(value, key) && !misspelt.includes(key))
    .map((key) => missingField(shapesUnder(branches, key), pathTo(path, key)));
  const isSlip =
    undecided?.present.length === 0 && undecided.known.some((key) => misspelt.includes(key));

  const within = Object.entries(value)
    .filter(([key]) => names.includes(key))
    .flatMap(([key, held]) =>
      structureProblems(shapesUnder(branches, key), held, pathTo(path, key)),
    );
  const open = undecided === undefined || isSlip ? [] : [oneOf(undecided, path)];
  return [...open, ...missing, ...unknown, ...misplaced, ...within];
}

function unknownField(key: string, names: readonly string[], path: string): Problem {
  const known = names.length > 0 ? { known: names } : {};
  return { code: 'unknown-field', path: pathTo(path, key), received: shortened(key), ...known };
}

function missingField(shapes: readonly Shape[], path: string): Problem {
  const words = shapes.flatMap(wordsOf);
  return { code: 'missing', path, ...(words.length > 0 && { known: words }) };
}

function oneOf({ present, known }: Undecided, path: string): Problem {
  return { code: 'one-of', path, received: present, known };
}

function wrongType(value: unknown, path: string, known: readonly string[]): Problem {
  return { code: 'wrong-type', path, received: shortened(value), known };
}

function nearOrAll(word: string, words: readonly string[]): readonly string[] {
  const near = nearest(word, words);
  return near.length > 0 ? near : words;
}

function isObject(value: unknown): value is Held {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
