// biome-ignore-all format: one substance a line, to be held against its source

import type { CitedConstants, CitedRange } from '../../foundation/validity/constants.js';
import type { SpeciesId } from '../../matter/species.js';

const livesey = 'livesey-2003', review = 'chattopadhyay-2014', lists = 'gi-lists', recalled = 'recalled-nutrition';
const primary = 'primary', secondary = 'secondary', memory = 'memory';

/** Glycaemic index of a substance, glucose = 100, with the lowest and highest value in print. */
export const GLYCAEMIC_INDEX = {
  glucose: { value: 100, source: livesey, grade: primary },
  sucrose: { value: 65, source: livesey, grade: primary },
  fructose: { value: 19, low: 19, high: 23, source: review, grade: secondary },
  lactose: { value: 46, source: review, grade: secondary },
  maltose: { value: 105, source: review, grade: secondary },
  isomaltulose: { value: 32, source: review, grade: secondary },
  trehalose: { value: 70, low: 45, high: 70, source: lists, grade: secondary },
  tagatose: { value: 3, low: 0, high: 3, source: recalled, grade: memory },
  allulose: { value: 0, source: lists, grade: secondary },
  'syrup-oligosaccharides': { value: 95, low: 85, high: 105, source: 'assumption', grade: 'assumed' },
  isomalt: { value: 9, low: 2, high: 9, source: livesey, grade: primary },
  maltitol: { value: 35, low: 35, high: 52, source: livesey, grade: primary },
  xylitol: { value: 13, low: 7, high: 13, source: livesey, grade: primary },
  sorbitol: { value: 9, source: livesey, grade: primary },
  mannitol: { value: 0, source: livesey, grade: primary },
  erythritol: { value: 0, source: livesey, grade: primary },
  lactitol: { value: 6, source: livesey, grade: primary },
  'hydrogenated-oligosaccharides': { value: 39, source: livesey, grade: primary, note: 'of whole polyglycitol' },
  glycerol: { value: 5, source: lists, grade: secondary },
  polydextrose: { value: 5, low: 4, high: 7, source: recalled, grade: memory },
  inulin: { value: 1, source: lists, grade: secondary },
} as const satisfies Partial<Record<SpeciesId, CitedRange>>;

/** Solids of a starch syrup by dextrose equivalent; between the two kinds and up to glucose assumed. */
export const SYRUP_GLYCAEMIC_INDEX = [[0, 105], [10, 105], [20, 95], [63, 95], [100, 100]] as const;
/** The lowest in print for maltodextrins; for syrups assumed. */
export const SYRUP_GLYCAEMIC_LOW = [[0, 85], [63, 85], [100, 100]] as const;
/** The highest in print for maltodextrins; for syrups assumed. */
export const SYRUP_GLYCAEMIC_HIGH = [[0, 135], [10, 135], [20, 105], [63, 105], [100, 100]] as const;

/** How well a mixture is met, and what the curve of syrup stands on. */
export const GLYCAEMIC_CONSTANTS = {
  plusMinus: { value: 10, source: 'assumption', grade: 'assumed', note: 'quote whole numbers' },
  maltodextrin: { value: 105, source: lists, grade: secondary, note: '85 to 135 in print' },
  syrupSolids: { value: 95, source: 'assumption', grade: 'assumed' },
} as const satisfies CitedConstants;
