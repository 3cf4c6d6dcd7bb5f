import type { Fields, Group, Shape } from './types.js';

/** The words a shape understands, in any of its branches. */
export function wordsOf(shape: Shape): readonly string[] {
  if (typeof shape === 'string') return [];
  if (!isGroup(shape)) return shape;
  return 'either' in shape ? shape.either.flatMap(wordsOf) : [];
}

/** The fields of a shape, or of every branch that has fields. */
export function branchesOf(shape: Shape): readonly Fields[] {
  if (!isGroup(shape)) return [];
  if ('fields' in shape) return [shape.fields];
  return 'either' in shape ? shape.either.flatMap(branchesOf) : [];
}

/** Everything that may stand under a name, branch by branch. */
export function shapesUnder(branches: readonly Fields[], name: string): readonly Shape[] {
  return branches.flatMap((fields) =>
    // A list of words is a shape itself, so it must not be spread.
    [name, `${name}?`].flatMap((key) => (Object.hasOwn(fields, key) ? [fields[key] as Shape] : [])),
  );
}

/** The names of the fields of any branch, in the order they are written in. */
export function fieldNames(branches: readonly Fields[]): readonly string[] {
  return [...new Set(branches.flatMap((fields) => Object.keys(fields).map(plainName)))];
}

/** The fields that must be there. */
export function requiredNames(fields: Fields): readonly string[] {
  return Object.keys(fields).filter((key) => !key.endsWith('?'));
}

/** A shape that holds other shapes; a list of words is an array and has an `entries` of its own. */
export function isGroup(shape: Shape): shape is Group {
  return typeof shape === 'object' && !Array.isArray(shape);
}

function plainName(key: string): string {
  return key.endsWith('?') ? key.slice(0, -1) : key;
}
