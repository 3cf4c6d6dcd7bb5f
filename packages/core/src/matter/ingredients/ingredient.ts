import { unknownName } from '../../foundation/validity/model-range-error.js';
import { ACIDS_AND_SALTS } from './acids.js';
import { FOODS } from './foods.js';
import { POLYOLS_AND_FIBRES } from './polyols.js';
import { SMALL_DOSES } from './small-doses.js';
import { SUGARS } from './sugars.js';
import { STARCH_SYRUPS } from './syrups.js';
import type { Ingredient, IngredientId } from './types.js';

/**
 * What an ingredient is made of when the cook gives no analysis.
 *
 * Everything weighed that is not water counts as dry, crystal water counts as water. A syrup's
 * solids, isomalt's water and the split of a polyol syrup differ by maker: where there is a
 * certificate, give a record of your own instead.
 *
 * @param id - Name of the ingredient, one of `INGREDIENT_IDS`.
 * @returns its composition as sold, each number with its source.
 * @throws {@link ModelRangeError} with code `unknown-name` for any other name.
 * @example
 * ingredient('glucose-syrup').drySolidsMassFraction.value // 0.8
 * @source recalled-compositions, common-practice, white-1962; each value names its own
 */
export function ingredient(id: IngredientId): Ingredient {
  const found = findIngredient(id);
  if (found === undefined) {
    throw unknownName('ingredient', id, 'Ingredient is none the library knows');
  }
  return found;
}

/** The same for a name that may be anyone's; undefined where there is no such ingredient. */
export function findIngredient(id: string): Ingredient | undefined {
  for (const shelf of [
    SUGARS,
    STARCH_SYRUPS,
    POLYOLS_AND_FIBRES,
    ACIDS_AND_SALTS,
    SMALL_DOSES,
    FOODS,
  ] as readonly Readonly<Partial<Record<string, Ingredient>>>[]) {
    if (Object.hasOwn(shelf, id)) return shelf[id];
  }
  return undefined;
}
