import { SHOP_NAMES } from '../../job/batch/shop-names.js';
import type { IngredientId } from '../../matter/ingredients/types.js';
import { SHOP_NOTES, type TakenAs } from './shop-notes.js';

/** What a name on a packet or in a recipe can mean. */
export type ShopName = {
  /** Best first; none where the name is no ingredient of a boil. */
  readonly candidates: readonly IngredientId[];
  /** The one question that decides; absent where there is nothing to decide. */
  readonly question?: string | undefined;
  /** What is taken when nobody answers. */
  readonly taken?: TakenAs | undefined;
  /** What a reader would otherwise trip over. */
  readonly note?: string | undefined;
};

/**
 * What a name on a packet can mean, and the one question that decides.
 *
 * Names of both regions are understood everywhere.
 *
 * @param name - As written, any case.
 * @returns the candidates, question and note, or undefined where the name is not listed.
 * @example
 * shopName('Glucose powder')?.question // 'Does the label say glucose syrup, or dextrose?'
 */
export function shopName(name: string): ShopName | undefined {
  const key = name
    .trim()
    .toLowerCase()
    .replace(/[’']/g, '')
    .replace(/[\s_-]+/g, '-');
  const note = SHOP_NOTES.find(({ names }) => names.includes(key));
  const listed = Object.hasOwn(SHOP_NAMES, key) ? SHOP_NAMES[key] : undefined;
  const candidates = note?.candidates ?? listed;
  if (candidates === undefined) return undefined;
  return { candidates, question: note?.question, taken: note?.taken, note: note?.note };
}
