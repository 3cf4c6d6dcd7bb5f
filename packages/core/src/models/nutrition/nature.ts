import type { CitedConstants } from '../../foundation/validity/constants.js';
import type { ApartKind, SpeciesId } from '../../matter/species.js';

/** What a label counts a substance as. */
export type Nature =
  | 'sugar'
  | 'carbohydrate'
  | 'polyol'
  | 'fibre'
  | 'organic-acid'
  | 'protein'
  | 'fat'
  | 'ethanol'
  | 'no-energy'
  | 'unknown';

/**
 * What each substance is, before any law says otherwise. Citrates, lactates and tartrate count as
 * their acid, salt and all: a little too much energy, never too little. Aspartame is made of amino
 * acids. No rule we know gives propylene glycol a factor.
 */
export const SPECIES_NATURE = {
  sucrose: 'sugar',
  glucose: 'sugar',
  fructose: 'sugar',
  maltose: 'sugar',
  lactose: 'sugar',
  trehalose: 'sugar',
  isomaltulose: 'sugar',
  allulose: 'sugar',
  tagatose: 'sugar',
  'syrup-oligosaccharides': 'carbohydrate',
  isomalt: 'polyol',
  maltitol: 'polyol',
  xylitol: 'polyol',
  sorbitol: 'polyol',
  mannitol: 'polyol',
  erythritol: 'polyol',
  lactitol: 'polyol',
  glycerol: 'polyol',
  'hydrogenated-oligosaccharides': 'polyol',
  'propylene-glycol': 'unknown',
  polydextrose: 'fibre',
  inulin: 'fibre',
  'citric-acid': 'organic-acid',
  'malic-acid': 'organic-acid',
  'tartaric-acid': 'organic-acid',
  'lactic-acid': 'organic-acid',
  'potassium-hydrogen-tartrate': 'organic-acid',
  'sodium-citrate': 'organic-acid',
  'sodium-lactate': 'organic-acid',
  'sodium-bicarbonate': 'no-energy',
  'sodium-chloride': 'no-energy',
  sucralose: 'no-energy',
  'acesulfame-k': 'no-energy',
  aspartame: 'protein',
  saccharin: 'no-energy',
  'steviol-glycosides': 'no-energy',
  protein: 'protein',
  ash: 'no-energy',
} as const satisfies Readonly<Record<SpeciesId, Nature>>;

/** What is weighed but not dissolved: flavour oil counts as fat, which is the most it can be. */
export const APART_NATURE = {
  fat: 'fat',
  oil: 'fat',
  ethanol: 'ethanol',
  pigment: 'no-energy',
  insoluble: 'carbohydrate',
} as const satisfies Readonly<Record<ApartKind, Nature>>;

/** Sweeteners that work in milligrams. */
export const INTENSE_SWEETENERS = [
  'sucralose',
  'acesulfame-k',
  'aspartame',
  'saccharin',
  'steviol-glycosides',
] as const satisfies readonly SpeciesId[];

const source = 'definition',
  grade = 'derived';

/** Sodium in a gram of what brings it, from the formula; the minerals of milk are not known. */
export const SODIUM_MASS_FRACTION = {
  'sodium-chloride': { value: 0.3934, source, grade },
  'sodium-citrate': { value: 0.2673, source, grade, note: 'trisodium, without its water' },
  'sodium-lactate': { value: 0.2052, source, grade },
  'sodium-bicarbonate': { value: 0.2737, source, grade },
} as const satisfies CitedConstants;

/** A label calls sodium times 2.5 salt. */
export const SALT_PER_SODIUM = {
  value: 2.5,
  source: 'eu-1169-2011-annex-1',
  grade: 'memory',
} as const;
