import type { IngredientId } from '../../matter/ingredients/types.js';

/** What a shop name is taken to be when nobody answers. */
export type TakenAs = {
  /** The id to write into a batch. */
  readonly ingredient: IngredientId;
  /** 0–100, where the label says nothing. */
  readonly dextroseEquivalent?: number;
  /** 0–1 as sold, where the label says nothing. */
  readonly drySolidsMassFraction?: number;
};

/** What is asked or said about a shop name. */
export type ShopNote = {
  /** In lower case, with hyphens, without apostrophes. */
  readonly names: readonly string[];
  /** Left out where the list of names a document reader knows says it. */
  readonly candidates?: readonly IngredientId[];
  readonly question?: string;
  readonly taken?: TakenAs;
  readonly note?: string;
};

/** Shop names that want a question or a word of warning. */
export const SHOP_NOTES: readonly ShopNote[] = [
  {
    names: ['icing-sugar', 'powdered-sugar', 'confectioners-sugar'],
    candidates: ['sucrose'],
    note: 'It mostly contains starch, which clouds a boil. Take granulated sugar.',
  },
  {
    names: ['brown-sugar', 'demerara-sugar', 'muscovado'],
    candidates: ['sucrose'],
    note: 'Taken as plain sugar; it browns early.',
  },
  {
    names: ['glucose-powder', 'powdered-glucose'],
    question: 'Does the label say glucose syrup, or dextrose?',
    note: 'Dextrose at 40 % of the solids gives a sweet that softens in a warm room.',
  },
  {
    names: ['glucose'],
    candidates: ['glucose-syrup', 'dextrose-monohydrate'],
    question: 'Is it a thick syrup, or a powder?',
  },
  {
    names: ['dextrose'],
    taken: { ingredient: 'dextrose-monohydrate' },
    question: 'Does the label say monohydrate, or anhydrous?',
  },
  {
    names: ['light-corn-syrup', 'corn-syrup', 'dark-corn-syrup'],
    candidates: ['glucose-syrup'],
    taken: { ingredient: 'glucose-syrup', dextroseEquivalent: 42, drySolidsMassFraction: 0.78 },
    question: 'Does the label give a dextrose equivalent (DE)?',
    note: 'Taken as DE 42, 78 % solids; a wrong guess moves the stop by about 1 °C.',
  },
  {
    names: ['corn-syrup-solids', 'glucose-syrup-solids', 'glucose-syrup-powder'],
    candidates: ['dried-glucose-syrup'],
    question: 'Does the label give a dextrose equivalent (DE)?',
  },
  { names: ['birch-sugar'], note: 'This is xylitol, which can kill a dog.' },
  {
    names: ['isomalt-sticks', 'isomalt-nibs', 'ready-melt-isomalt'],
    candidates: ['isomalt-dry', 'isomalt'],
    question: 'Is it already melted and dried, or granules?',
  },
  {
    names: ['citric', 'lemon-salt', 'sour-salt'],
    taken: { ingredient: 'citric-acid' },
    question: 'Does the label say anhydrous, or monohydrate?',
  },
  {
    names: ['baking-powder'],
    candidates: [],
    note: 'It is soda with an acid and starch. Take baking soda.',
  },
  {
    names: ['stevia'],
    candidates: ['steviol-glycosides', 'erythritol'],
    question: 'Is it pure, or bulked out with erythritol?',
  },
  {
    names: ['flavour', 'flavouring', 'flavor', 'flavoring', 'candy-flavoring'],
    candidates: ['flavour-propylene-glycol', 'flavour-oil', 'flavour-alcohol', 'flavour-glycerol'],
    question: 'What does the label list first: an oil, propylene glycol, alcohol, or glycerine?',
  },
  {
    names: ['essential-oil', 'peppermint-oil', 'lemon-oil'],
    candidates: ['flavour-oil'],
    question: 'Is it food grade?',
  },
  {
    names: ['colour', 'color', 'food-colouring', 'food-coloring'],
    candidates: ['colour-liquid', 'colour-powder'],
    question: 'Is it liquid, or powder?',
  },
];
