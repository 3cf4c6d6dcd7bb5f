import type { CitedRange } from '../../foundation/validity/constants.js';
import type { Conversion } from '../saccharides/types.js';
import type { ApartKind, SpeciesId } from '../species.js';

/** What shelf an ingredient stands on. */
export type IngredientKind =
  | 'water'
  | 'sugar'
  | 'starch-syrup'
  | 'polyol'
  | 'fibre'
  | 'acid'
  | 'salt'
  | 'intense-sweetener'
  | 'flavour'
  | 'colour'
  | 'food';

/** The ingredients the library knows by name. */
export type IngredientId =
  | 'water'
  | 'sucrose'
  | 'glucose'
  | 'dextrose-monohydrate'
  | 'fructose'
  | 'maltose'
  | 'lactose'
  | 'lactose-monohydrate'
  | 'trehalose'
  | 'trehalose-dihydrate'
  | 'isomaltulose'
  | 'allulose'
  | 'tagatose'
  | 'invert-syrup'
  | 'honey'
  | 'golden-syrup'
  | 'glucose-syrup'
  | 'dried-glucose-syrup'
  | 'maltodextrin'
  | 'high-fructose-syrup'
  | 'isomalt'
  | 'isomalt-dry'
  | 'maltitol'
  | 'maltitol-syrup'
  | 'xylitol'
  | 'sorbitol'
  | 'sorbitol-syrup'
  | 'mannitol'
  | 'erythritol'
  | 'lactitol'
  | 'lactitol-monohydrate'
  | 'hydrogenated-starch-hydrolysate'
  | 'glycerol'
  | 'polydextrose'
  | 'inulin'
  | 'citric-acid'
  | 'citric-acid-monohydrate'
  | 'malic-acid'
  | 'tartaric-acid'
  | 'lactic-acid'
  | 'cream-of-tartar'
  | 'sodium-citrate'
  | 'sodium-lactate'
  | 'sodium-bicarbonate'
  | 'salt'
  | 'sucralose'
  | 'acesulfame-k'
  | 'aspartame'
  | 'saccharin'
  | 'steviol-glycosides'
  | 'flavour-oil'
  | 'flavour-alcohol'
  | 'flavour-glycerol'
  | 'flavour-propylene-glycol'
  | 'colour-liquid'
  | 'colour-powder'
  | 'butter'
  | 'cream'
  | 'whole-milk'
  | 'condensed-milk'
  | 'nuts'
  | 'gelatin'
  | 'egg-white';

/**
 * What an ingredient is made of, as sold. Only composition stands here: each model keeps the
 * constants of the species it knows.
 */
export type Ingredient = {
  readonly kind: IngredientKind;
  /** Everything weighed that is not water, crystal water counted as water, 0–1 as sold. */
  readonly drySolidsMassFraction: CitedRange;
  /** Shares of each species in the dry part, 0–1. */
  readonly solids?: Readonly<Partial<Record<SpeciesId, number>>>;
  /** Shares of what does not dissolve in the dry part, 0–1. */
  readonly apart?: Readonly<Partial<Record<ApartKind, number>>>;
  /** The dry part is starch syrup solids of this dextrose equivalent, unless the cook says otherwise. */
  readonly dextroseEquivalent?: CitedRange;
  /** How the starch is taken to be cut when the cook says nothing. */
  readonly conversion?: Conversion;
  /** Grade of the split of the dry part into species. */
  readonly compositionGrade: CitedRange['grade'];
  /** The hottest mass this may go into, °C, where there is such a limit. */
  readonly maxAdditionC?: CitedRange;
};
