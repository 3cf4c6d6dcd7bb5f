import type { BatchDocument } from 'vitrose';
import type { KitchenDocument } from 'vitrose/documents';
import { kitchenOf, recipeOf } from './recipe.js';

/** The part of `localStorage` that is used; a test brings its own. */
export type Shelf = {
  readonly getItem: (key: string) => string | null;
  readonly setItem: (key: string, value: string) => void;
  readonly removeItem: (key: string) => void;
};

/** Where the kitchen lies on this device. */
export const KITCHEN_KEY = 'vitrose.kitchen';
/** Where the recipe that was last on the table lies, so that a reload loses nothing. */
export const RECIPE_KEY = 'vitrose.recipe';

/** The readers of documents; they come later than the page, and a test brings the real ones. */
export type Documents = Pick<
  typeof import('vitrose/documents'),
  'readKitchen' | 'readBatch' | 'kitchenText' | 'batchText'
>;

/** My kitchen, or nothing where none is kept or what is kept cannot be read. */
export function keptKitchen(shelf: Shelf, { readKitchen }: Documents): KitchenDocument | undefined {
  const text = taken(shelf, KITCHEN_KEY);
  if (text === null) return undefined;
  const reading = readKitchen(text);
  return reading.kind === 'kitchen' ? reading.kitchen : undefined;
}

/** The recipe that was last on the table. */
export function keptRecipe(shelf: Shelf, { readBatch }: Documents): BatchDocument | undefined {
  const text = taken(shelf, RECIPE_KEY);
  if (text === null) return undefined;
  const reading = readBatch(text);
  return reading.kind === 'batch' ? reading.batch : undefined;
}

/** Keeps the kitchen of this batch; a batch without one clears the shelf. */
export function keepKitchen(shelf: Shelf, batch: BatchDocument, documents: Documents): void {
  const kitchen = kitchenOf(batch);
  put(shelf, KITCHEN_KEY, kitchen === undefined ? undefined : documents.kitchenText(kitchen));
}

/** Keeps the recipe of this batch. */
export function keepRecipe(shelf: Shelf, batch: BatchDocument, documents: Documents): void {
  put(shelf, RECIPE_KEY, documents.batchText(recipeOf(batch)));
}

/** A browser may refuse its storage altogether; then nothing is kept, and nothing breaks. */
function taken(shelf: Shelf, key: string): string | null {
  try {
    return shelf.getItem(key);
  } catch {
    return null;
  }
}

function put(shelf: Shelf, key: string, text: string | undefined): void {
  try {
    if (text === undefined) shelf.removeItem(key);
    else shelf.setItem(key, text);
  } catch {
    // Full or forbidden: the page works on without it.
  }
}
