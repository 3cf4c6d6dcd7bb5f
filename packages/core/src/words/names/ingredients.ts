import type { IngredientId } from '../../matter/ingredients/types.js';
import { isUs } from '../text/fill.js';
import type { ByRegion, Catalogue, DisplayOptions } from '../types.js';

/** What an ingredient is called on a shopping list. */
export const INGREDIENT_NAMES = {
  water: 'water',
  sucrose: 'sugar',
  glucose: 'dextrose, dry (anhydrous glucose)',
  'dextrose-monohydrate': 'dextrose (glucose powder)',
  fructose: 'fructose',
  maltose: 'maltose',
  lactose: 'lactose, dry',
  'lactose-monohydrate': 'lactose',
  trehalose: 'trehalose, dry',
  'trehalose-dihydrate': 'trehalose',
  isomaltulose: 'isomaltulose',
  allulose: 'allulose',
  tagatose: 'tagatose',
  'invert-syrup': 'invert sugar syrup',
  honey: 'honey',
  'golden-syrup': 'golden syrup',
  'glucose-syrup': ['glucose syrup', 'corn syrup'],
  'dried-glucose-syrup': ['dried glucose syrup', 'corn syrup solids'],
  maltodextrin: 'maltodextrin',
  'high-fructose-syrup': ['glucose-fructose syrup', 'high-fructose corn syrup'],
  isomalt: 'isomalt',
  'isomalt-dry': 'isomalt, dried or ready-melted',
  maltitol: 'maltitol',
  'maltitol-syrup': 'maltitol syrup',
  xylitol: 'xylitol',
  sorbitol: 'sorbitol',
  'sorbitol-syrup': 'sorbitol syrup',
  mannitol: 'mannitol',
  erythritol: 'erythritol',
  lactitol: 'lactitol, dry',
  'lactitol-monohydrate': 'lactitol',
  'hydrogenated-starch-hydrolysate': ['polyglycitol syrup', 'hydrogenated starch hydrolysate'],
  glycerol: ['glycerine', 'glycerin'],
  polydextrose: 'polydextrose',
  inulin: 'inulin',
  'citric-acid': 'citric acid',
  'citric-acid-monohydrate': 'citric acid monohydrate',
  'malic-acid': 'malic acid',
  'tartaric-acid': 'tartaric acid',
  'lactic-acid': 'lactic acid, 88 %',
  'cream-of-tartar': 'cream of tartar',
  'sodium-citrate': 'sodium citrate',
  'sodium-lactate': 'sodium lactate, 60 %',
  'sodium-bicarbonate': ['bicarbonate of soda', 'baking soda'],
  salt: 'salt',
  sucralose: 'sucralose',
  'acesulfame-k': 'acesulfame-K',
  aspartame: 'aspartame',
  saccharin: 'saccharin',
  'steviol-glycosides': 'steviol glycosides',
  'flavour-oil': ['flavour oil', 'flavor oil'],
  'flavour-alcohol': ['flavour in alcohol', 'flavor in alcohol'],
  'flavour-glycerol': ['flavour in glycerine', 'flavor in glycerin'],
  'flavour-propylene-glycol': ['flavour in propylene glycol', 'flavor in propylene glycol'],
  'colour-liquid': ['liquid colour', 'liquid color'],
  'colour-powder': ['powder colour', 'powder color'],
  butter: 'butter',
  cream: ['cream', 'heavy cream'],
  'whole-milk': 'whole milk',
  'condensed-milk': 'sweetened condensed milk',
  nuts: 'nuts',
  gelatin: ['gelatine', 'gelatin'],
  'egg-white': 'egg white',
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
    ? INGREDIENT_NAMES[id as IngredientId]
    : undefined;
  if (name === undefined) return id.replaceAll('-', ' ');
  return typeof name === 'string' ? name : name[isUs(options) ? 1 : 0];
}
