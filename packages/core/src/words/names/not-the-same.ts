import type { IngredientId } from '../../matter/ingredients/types.js';

/** Ingredients people take for one another. */
const NOT_THE_SAME: readonly { readonly ids: readonly IngredientId[]; readonly note: string }[] = [
  {
    ids: ['dextrose-monohydrate', 'glucose', 'dried-glucose-syrup', 'glucose-syrup'],
    note: 'Dextrose is one small sugar; glucose syrup holds long chains. Dextrose softens a sweet that glucose syrup keeps hard.',
  },
  {
    ids: ['isomalt', 'isomalt-dry', 'isomaltulose', 'maltitol'],
    note: 'Isomalt, isomaltulose and maltitol are three things. Isomaltulose is a sugar; maltitol stays hard less far up than isomalt.',
  },
  {
    ids: ['cream-of-tartar', 'citric-acid', 'tartaric-acid'],
    note: 'Cream of tartar is a weak acid salt that goes in at the first boil, as doctor. Citric or tartaric acid there would invert far too much.',
  },
  {
    ids: ['sodium-bicarbonate'],
    note: 'Baking soda is not baking powder, which holds acid and starch as well.',
  },
  { ids: ['sucrose'], note: 'Icing sugar mostly contains starch and clouds a boil.' },
  {
    ids: ['flavour-oil', 'flavour-propylene-glycol', 'flavour-alcohol', 'flavour-glycerol'],
    note: 'An oil is far stronger than the same flavour in propylene glycol, alcohol or glycerine. Never swap them spoon for spoon.',
  },
  {
    ids: ['citric-acid', 'citric-acid-monohydrate'],
    note: 'The monohydrate holds water: 1.09 g of it does what 1 g of anhydrous acid does.',
  },
];

/**
 * What an ingredient is often taken for and is not.
 *
 * @param id - An ingredient.
 * @returns notes, none for most.
 * @example
 * notTheSameAs('sodium-bicarbonate') // ['Baking soda is not baking powder, which holds acid and starch as well.']
 */
export function notTheSameAs(id: IngredientId): readonly string[] {
  return NOT_THE_SAME.filter(({ ids }) => ids.includes(id)).map(({ note }) => note);
}
