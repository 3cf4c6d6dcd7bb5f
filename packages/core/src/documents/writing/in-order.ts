import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { branchesOf, fieldNames, isGroup, shapesUnder } from '../shape/look-at.js';
import type { Shape } from '../shape/types.js';

/**
 * The same value with its fields in the order of its shape, names by alphabet, and nothing
 * undefined: equal documents become equal texts.
 */
export function inOrder(shapes: readonly Shape[], value: unknown, path: string): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    // JSON has no word for it and would write `null`, which no reader takes for a number.
    throw new ModelRangeError(`A document holds finite numbers only; ${path} is ${value}.`, {
      code: 'not-a-number',
      parameter: path,
      received: value,
    });
  }
  if (typeof value !== 'object' || value === null) return value;
  if (Array.isArray(value)) {
    const items = shapes.flatMap((one) => (isGroup(one) && 'list' in one ? [one.list] : []));
    return value.map((item, at) => inOrder(items, item, `${path}/${at}`));
  }
  const branches = shapes.flatMap(branchesOf);
  const entries = shapes.flatMap((one) => (isGroup(one) && 'entries' in one ? [one.entries] : []));
  const held = value as Readonly<Record<string, unknown>>;
  const first = fieldNames(branches).filter((key) => Object.hasOwn(held, key));
  const others = Object.keys(held)
    .filter((key) => !first.includes(key))
    .sort();
  return Object.fromEntries(
    [...first, ...others].map((key) => {
      const under = [...shapesUnder(branches, key), ...entries];
      return [key, inOrder(under, held[key], `${path}/${key}`)];
    }),
  );
}
