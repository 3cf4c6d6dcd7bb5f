import type { IngredientId } from '../../matter/ingredients/types.js';
import { isUs } from '../text/region.js';
import type { ByRegion, Catalogue, DisplayOptions } from '../types.js';

/** What an ingredient is called on a shopping list. */
export const INGREDIENT_NAMES = {
  sucrose: 'sugar',
  glucose: 'dextrose, dry (anhydrous glucose)',
  'dextrose-monohydrate': 'dextrose (glucose powder)',
  lactose: 'lactose, dry',
  'lactose-monohydrate': 'lactose',
  trehalose: 'trehalose, dry',
  'trehalose-dihydrate': 'trehalose',
  'invert-syrup': 'invert sugar syrup',
  'glucose-syrup': ['glucose syrup', 'corn syrup'],
  'dried-glucose-syrup': ['dried glucose syrup', 'corn syrup solids'],
  'high-fructose-syrup': ['glucose-fructose syrup', 'high-fructose corn syrup'],
  'isomalt-dry': 'isomalt, dried or ready-melted',
  lactitol: 'lactitol, dry',
  'lactitol-monohydrate': 'lactitol',
  'hydrogenated-starch-hydrolysate': ['polyglycitol syrup', 'hydrogenated starch hydrolysate'],
  glycerol: ['glycerine', 'glycerin'],
  'lactic-acid': 'lactic acid, 88 %',
  'sodium-lactate': 'sodium lactate, 60 %',
  'sodium-bicarbonate': ['bicarbonate of soda', 'baking soda'],
  'acesulfame-k': 'acesulfame-K',
  'flavour-oil': ['flavour oil', 'flavor oil'],
  'flavour-alcohol': ['flavour in alcohol', 'flavor in alcohol'],
  'flavour-glycerol': ['flavour in glycerine', 'flavor in glycerin'],
  'flavour-propylene-glycol': ['flavour in propylene glycol', 'flavor in propylene glycol'],
  'colour-liquid': ['liquid colour', 'liquid color'],
  'colour-powder': ['powder colour', 'powder color'],
  cream: ['cream', 'heavy cream'],
  'condensed-milk': 'sweetened condensed milk',
  gelatin: ['gelatine', 'gelatin'],
} as const satisfies Catalogue['ingredients'];

/**
 * What an ingredient is called in a kitchen.
 *
 * @param id - An ingredient the library knows, or a name of the cook's own, which stays as it is.
 * @param options - `region` chooses glucose syrup or corn syrup.
 * @example
 * ingredientName('glucose-syrup', { region: 'us' }) // 'corn syrup'
 */
export function ingredientName(
  id: IngredientId | (string & {}),
  options: DisplayOptions = {},
): string {
  const name: ByRegion | undefined = Object.hasOwn(INGREDIENT_NAMES, id)
    ? INGREDIENT_NAMES[id as keyof typeof INGREDIENT_NAMES]
    : undefined;
  if (name === undefined) return id.replaceAll('-', ' ');
  return typeof name === 'string' ? name : name[isUs(options) ? 1 : 0];
}
