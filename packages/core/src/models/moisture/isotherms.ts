import type { Pedigree } from '../../foundation/numeric/pedigree.js';
import type { SpeciesId } from '../../matter/species.js';

/** A GAB isotherm at 25 °C: grams of water on 100 g of dry glass against water activity. */
export type Isotherm = Pedigree & {
  /** Water that would cover everything once, g on 100 g. */
  readonly monolayerGPer100G: number;
  readonly c: number;
  readonly k: number;
};

/** Amorphous sugars somebody measured. */
export const ISOTHERMS = {
  sucrose: {
    source: 'sorption-fit',
    grade: 'derived',
    locator: 'to the equation of Zobrist and others, 0.05 to 0.80',
    monolayerGPer100G: 13.661,
    c: 1.1033,
    k: 0.9248,
  },
  'syrup-solids': {
    source: 'sorption-fit',
    grade: 'derived',
    locator: 'to four rows of Sloan and Labuza, 0.60 to 0.90; run on below',
    monolayerGPer100G: 8.221,
    c: 2.012,
    k: 0.955,
  },
  sorbitol: {
    source: 'sorption-fit',
    grade: 'derived',
    locator: 'to four rows of Sloan and Labuza, 0.60 to 0.90; run on below',
    monolayerGPer100G: 12.174,
    c: 3.289,
    k: 0.993,
  },
  lactose: {
    source: 'bronlund-paterson-2004',
    grade: 'memory',
    monolayerGPer100G: 4.91,
    c: 4.33,
    k: 1.16,
  },
} as const satisfies Readonly<Record<string, Isotherm>>;

/** The key of an isotherm. */
export type IsothermId = keyof typeof ISOTHERMS;

/** Substances that have an isotherm of their own. */
export const MEASURED_ISOTHERMS: Readonly<Partial<Record<SpeciesId, IsothermId>>> = {
  sucrose: 'sucrose',
  lactose: 'lactose',
  sorbitol: 'sorbitol',
  'syrup-oligosaccharides': 'syrup-solids',
};

/**
 * Substances another one stands in for, mass for mass: assumed. For fructose there are four rows from
 * 0.6 up, which lie 1 to 16 % over the sucrose curve; for isomalt none was found, and crystalline
 * isomalt is another matter: it takes up no water until about 0.85.
 */
export const STAND_IN_ISOTHERMS: Readonly<Partial<Record<SpeciesId, IsothermId>>> = {
  glucose: 'sucrose',
  fructose: 'sucrose',
  maltose: 'sucrose',
  trehalose: 'sucrose',
  isomaltulose: 'sucrose',
  allulose: 'sucrose',
  tagatose: 'sucrose',
  isomalt: 'sucrose',
  polydextrose: 'syrup-solids',
  inulin: 'syrup-solids',
};

/** Sugar alcohols: a glass of them gets no estimate of how fast it wets. */
export const POLYOLS: readonly SpeciesId[] = [
  'isomalt',
  'maltitol',
  'xylitol',
  'sorbitol',
  'mannitol',
  'erythritol',
  'lactitol',
  'glycerol',
  'propylene-glycol',
  'hydrogenated-oligosaccharides',
];
