import type { BatchDocument } from 'vitrose';
import type { KitchenDocument } from 'vitrose/documents';
import { known } from './formula.js';

/** The parts of a batch that belong to a kitchen and not to a recipe. */
export const KITCHEN_PARTS = [
  'kitchen',
  'thermometer',
  'hob',
  'pan',
  'room',
  'water',
  'mould',
] as const satisfies readonly (keyof KitchenDocument)[];

/** The kitchen of a batch on its own, or nothing where it has none. */
export function kitchenOf(batch: BatchDocument): KitchenDocument | undefined {
  const { kitchen, thermometer, hob, pan, room, water, mould } = batch;
  const parts = known({ kitchen, thermometer, hob, pan, room, water, mould });
  return Object.keys(parts).length === 0 ? undefined : { format: 'vitrose.kitchen/1', ...parts };
}

/**
 * The recipe of a batch, to be given away: without the kitchen. The size of a piece belongs to the
 * recipe, so it stays where only the mould says it.
 */
export function recipeOf(batch: BatchDocument): BatchDocument {
  const {
    kitchen: _k,
    thermometer: _t,
    hob: _h,
    pan: _p,
    room: _r,
    water: _w,
    mould,
    ...recipe
  } = batch;
  const { pieces } = recipe;
  const cavityMl = mould?.cavityMl;
  const sizeless = pieces?.massG === undefined && pieces?.cavityMl === undefined;
  return sizeless && cavityMl !== undefined
    ? { ...recipe, pieces: { ...pieces, cavityMl } }
    : recipe;
}

/** A recipe laid into a kitchen. Where both say how large a cavity is, the mould on the table does. */
export function inKitchen(
  recipe: BatchDocument,
  kitchen: KitchenDocument | undefined,
): BatchDocument {
  const bare = recipeOf(recipe);
  if (kitchen === undefined) return bare;
  const { format: _format, ...parts } = kitchen;
  const { pieces, ...rest } = bare;
  if (pieces === undefined || parts.mould?.cavityMl === undefined) return { ...bare, ...parts };
  const { cavityMl: _cavity, ...others } = pieces;
  return Object.keys(others).length === 0
    ? { ...rest, ...parts }
    : { ...rest, pieces: others, ...parts };
}
