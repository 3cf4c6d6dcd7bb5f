import { placesOf, shortened } from '../../job/batch/limits.js';
import type { Problem } from '../../job/batch/problems.js';
import type { ShopNames } from '../../job/batch/shop-names.js';
import { INGREDIENT_IDS } from '../../matter/ingredients/index.js';
import { DOCUMENT_CAPS } from '../caps.js';
import { nearest } from './nearest.js';

/** The fields of a batch that name an ingredient. */
const NAMING_FIELDS = [
  'formula/*/ingredient',
  'formula/*/shareOfIngredient/ingredient',
  'formula/*/makeUpWaterFor/ingredient',
] as const;

/** Every ingredient a batch names that nobody knows, and every own name that is taken. */
export function ingredientNameProblems(batch: unknown, shopNames: ShopNames): readonly Problem[] {
  const ids: readonly string[] = INGREDIENT_IDS;
  const own = placesOf(batch, 'ingredients/*').map(({ path }) => ({ path, name: lastKey(path) }));
  const names = [...ids, ...own.map(({ name }) => name)];
  // No batch uses more names than it has lines; a flood of them must not make guessing slow.
  const guesses = names.slice(0, ids.length + DOCUMENT_CAPS.lines);
  const taken = own
    .filter(({ name }) => ids.includes(name))
    .map(({ path, name }): Problem => ({ code: 'name-taken', path, received: name }));

  const unknown = NAMING_FIELDS.flatMap((field) => placesOf(batch, field)).flatMap(
    ({ path, value }): readonly Problem[] => {
      if (typeof value !== 'string' || names.includes(value)) return [];
      const known = suggestions(value, guesses, shopNames);
      return [{ code: 'unknown-name', path, received: shortened(value), ...known }];
    },
  );
  return [...taken, ...unknown];
}

/** What the shop calls so comes before what is merely spelt like it. */
function suggestions(
  typed: string,
  names: readonly string[],
  shopNames: ShopNames,
): { readonly known?: readonly string[] } {
  const plain = typed
    .trim()
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/[\s_-]+/g, '-');
  const sold = (name: string): readonly string[] =>
    Object.hasOwn(shopNames, name) ? (shopNames[name] ?? []) : [];
  const spelt = nearest(plain, [...names, ...Object.keys(shopNames)]);
  const meant = [
    ...sold(plain),
    ...spelt.flatMap((one) => (names.includes(one) ? one : sold(one))),
  ];
  return meant.length === 0 ? {} : { known: [...new Set(meant)].slice(0, 4) };
}

function lastKey(path: string): string {
  return path
    .slice(path.lastIndexOf('/') + 1)
    .replaceAll('~1', '/')
    .replaceAll('~0', '~');
}
