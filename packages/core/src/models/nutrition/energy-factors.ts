// biome-ignore-all format: one factor a line, to be held against the law

import type { Cited, CitedConstants, CitedRange } from '../../foundation/validity/constants.js';
import type { SpeciesId } from '../../matter/species.js';

/**
 * Energy of a gram by what it is. A substance with a factor of its own takes that one, any other
 * the factor of its kind; sugars are carbohydrate. Without `polyol` a sugar alcohol that is not
 * listed has no factor, and the label warns.
 */
export type EnergyFactors = {
  readonly carbohydrate: CitedRange;
  readonly protein: CitedRange;
  readonly fat: CitedRange;
  readonly ethanol: CitedRange;
  readonly 'organic-acid': CitedRange;
  readonly fibre: CitedRange;
  readonly polyol?: CitedRange | undefined;
} & { readonly [species in SpeciesId as Exclude<species, 'protein'>]?: CitedRange | undefined };

const us = 'us-21-cfr-101-9', eu = 'eu-1169-2011-annex-14', recalled = 'recalled-nutrition';
const listed = '(c)(1)(i)(F)', general = '(c)(1)(i)(C)';
const secondary = 'secondary', memory = 'memory';

/** United States, kcal/g. */
export const US_KCAL_PER_G = {
  carbohydrate: { value: 4, source: us, grade: memory, locator: general },
  protein: { value: 4, source: us, grade: memory, locator: general },
  fat: { value: 9, source: us, grade: memory, locator: general },
  ethanol: { value: 7, source: recalled, grade: memory },
  'organic-acid': { value: 4, source: us, grade: memory, locator: general, note: 'no factor of its own: acid is carbohydrate by difference' },
  fibre: { value: 2, low: 0, high: 2, source: us, grade: memory, locator: general, note: 'soluble; insoluble fibre gives 0' },
  isomalt: { value: 2, source: us, grade: secondary, locator: listed },
  lactitol: { value: 2, source: us, grade: secondary, locator: listed },
  maltitol: { value: 2.1, source: us, grade: secondary, locator: listed },
  'hydrogenated-oligosaccharides': { value: 3, source: us, grade: secondary, locator: listed, note: 'of whole hydrogenated starch hydrolysates' },
  mannitol: { value: 1.6, source: us, grade: secondary, locator: listed },
  sorbitol: { value: 2.6, source: us, grade: secondary, locator: listed },
  xylitol: { value: 2.4, source: us, grade: secondary, locator: listed },
  erythritol: { value: 0, source: us, grade: secondary, locator: listed, note: '0.2 before 2016' },
  glycerol: { value: 4.32, source: recalled, grade: memory },
  polydextrose: { value: 1, source: recalled, grade: memory },
  inulin: { value: 1.5, low: 1.5, high: 2, source: recalled, grade: memory, note: 'between 1.5 and 2 with evidence' },
  allulose: { value: 0.4, source: 'fda-allulose-2020', grade: 'secondary' },
  tagatose: { value: 1.5, source: recalled, grade: memory },
} as const satisfies EnergyFactors;

/** European Union, kcal/g. Allulose was not authorised there when this was written. */
export const EU_KCAL_PER_G = {
  carbohydrate: { value: 4, source: eu, grade: secondary },
  protein: { value: 4, source: eu, grade: secondary },
  fat: { value: 9, source: eu, grade: secondary },
  ethanol: { value: 7, source: eu, grade: secondary },
  'organic-acid': { value: 3, source: eu, grade: secondary },
  fibre: { value: 2, source: eu, grade: secondary },
  polyol: { value: 2.4, source: eu, grade: secondary },
  erythritol: { value: 0, source: eu, grade: secondary },
  allulose: { value: 4, source: recalled, grade: memory },
  tagatose: { value: 4, source: recalled, grade: memory },
} as const satisfies EnergyFactors;

/** European Union, kJ/g: factors of their own, never the others converted. */
export const EU_KJ_PER_G = {
  carbohydrate: { value: 17, source: eu, grade: secondary },
  protein: { value: 17, source: eu, grade: secondary },
  fat: { value: 37, source: eu, grade: secondary },
  ethanol: { value: 29, source: eu, grade: secondary },
  'organic-acid': { value: 13, source: eu, grade: secondary },
  fibre: { value: 8, source: eu, grade: secondary },
  polyol: { value: 10, source: eu, grade: secondary },
  erythritol: { value: 0, source: eu, grade: secondary },
  allulose: { value: 17, source: recalled, grade: memory },
  tagatose: { value: 17, source: recalled, grade: memory },
} as const satisfies EnergyFactors;

/** Kilojoules in a kilocalorie, where a law has no factors of its own. */
export const KJ_PER_KCAL = { value: 4.184, source: 'definition', grade: 'derived' } as const satisfies Cited;

/** What belongs to no single law. */
export const ENERGY_CONSTANTS = {
  /** kcal/g of what is insoluble, when none of it is digested. */
  leastOfInsoluble: { value: 0, source: 'assumption', grade: 'assumed' },
  /** Long chains in the solids of a hydrogenated syrup, at the least. */
  longShareOfHydrolysate: { value: 0.42, source: 'assumption', grade: 'assumed', note: 'maltitol syrup as this library takes it' },
} as const satisfies CitedConstants;

/** Sugar alcohols that come with the long chains of a hydrogenated syrup. */
export const HYDROLYSATE_PARTS = ['maltitol', 'sorbitol', 'mannitol'] as const satisfies readonly SpeciesId[];
