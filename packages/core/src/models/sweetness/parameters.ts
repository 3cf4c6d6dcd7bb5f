// biome-ignore-all format: one substance a line, to be held against its source

import type { Span } from '../../foundation/results/types.js';
import type { CitedConstants, CitedRange } from '../../foundation/validity/constants.js';
import type { SpeciesId } from '../../matter/species.js';

/** Sweetness weight for weight beside sucrose, with the lowest and highest value in print. */
export type Sweetness = CitedRange & { readonly low: number; readonly high: number };

/**
 * Grams of sucrose that taste as sweet as one gram of the dry substance, in about ten parts of
 * sweetener in a hundred of water at 20 to 25 °C. Low and high are what sources print, no
 * statistics.
 */
export const SWEETNESS = {
  sucrose: { value: 1, low: 1, high: 1, source: 'definition', grade: 'derived' },
  glucose: { value: 0.74, low: 0.5, high: 0.8, source: 'sweetness-encyclopedia', grade: 'secondary', note: 'nearer 0.95 when concentrated' },
  fructose: { value: 1.2, low: 1, high: 1.8, source: 'sweetness-encyclopedia', grade: 'secondary', note: '1.8 for fresh crystals only' },
  maltose: { value: 0.4, low: 0.3, high: 0.5, source: 'chattopadhyay-2014', grade: 'secondary' },
  lactose: { value: 0.2, low: 0.15, high: 0.4, source: 'chattopadhyay-2014', grade: 'secondary' },
  trehalose: { value: 0.45, low: 0.4, high: 0.7, source: 'chattopadhyay-2014', grade: 'secondary' },
  isomaltulose: { value: 0.42, low: 0.3, high: 0.5, source: 'chattopadhyay-2014', grade: 'secondary' },
  allulose: { value: 0.7, low: 0.55, high: 0.75, source: 'sweetness-2022', grade: 'secondary' },
  tagatose: { value: 0.92, low: 0.75, high: 0.92, source: 'chattopadhyay-2014', grade: 'secondary' },
  'syrup-oligosaccharides': { value: 0.2, low: 0.05, high: 0.3, source: 'assumption', grade: 'assumed' },
  isomalt: { value: 0.5, low: 0.4, high: 0.65, source: 'chattopadhyay-2014', grade: 'secondary', note: 'nearer 0.6 when concentrated' },
  maltitol: { value: 0.87, low: 0.7, high: 0.95, source: 'chattopadhyay-2014', grade: 'secondary' },
  xylitol: { value: 0.95, low: 0.85, high: 1.1, source: 'chattopadhyay-2014', grade: 'secondary', note: 'middle of 0.90 in the trade and 1.00 in reviews' },
  sorbitol: { value: 0.6, low: 0.5, high: 0.7, source: 'chattopadhyay-2014', grade: 'secondary' },
  mannitol: { value: 0.55, low: 0.4, high: 0.72, source: 'chattopadhyay-2014', grade: 'secondary' },
  erythritol: { value: 0.65, low: 0.53, high: 0.8, source: 'chattopadhyay-2014', grade: 'secondary' },
  lactitol: { value: 0.36, low: 0.3, high: 0.42, source: 'chattopadhyay-2014', grade: 'secondary' },
  glycerol: { value: 0.6, low: 0.55, high: 0.75, source: 'sweetness-encyclopedia', grade: 'secondary' },
  'hydrogenated-oligosaccharides': { value: 0.5, low: 0.25, high: 0.9, source: 'chattopadhyay-2014', grade: 'secondary', note: 'of whole hydrogenated hydrolysates' },
  polydextrose: { value: 0.05, low: 0, high: 0.1, source: 'health-canada-polyols', grade: 'secondary', note: 'printed: not sweet' },
  inulin: { value: 0.1, low: 0, high: 0.3, source: 'recalled-sweetness', grade: 'memory' },
} as const satisfies Partial<Record<SpeciesId, Sweetness>>;

/** What tastes of something else, or of nothing: counted in the mass, with no sweetness. */
export const NOT_SWEET = [
  'citric-acid', 'malic-acid', 'tartaric-acid', 'lactic-acid', 'potassium-hydrogen-tartrate',
  'sodium-citrate', 'sodium-lactate', 'sodium-bicarbonate', 'sodium-chloride', 'protein', 'ash',
] as const satisfies readonly SpeciesId[];

/** s(DE) = 0.01335·DE − 0.0000595·DE². */
export const SYRUP_SWEETNESS_CONSTANTS = {
  perDextroseEquivalent: { value: 0.01335, source: 'syrup-sweetness-fit', grade: 'derived' },
  perDextroseEquivalentSquared: { value: -0.0000595, source: 'syrup-sweetness-fit', grade: 'derived' },
} as const satisfies CitedConstants;

/**
 * Lowest sweetness of syrup solids by dextrose equivalent: the plain sum over the saccharides.
 * Handbooks print nearly twice that at 42. Nobody has settled it, so both are in the band.
 */
export const SYRUP_SWEETNESS_LOW = [
  [0, 0], [10, 0.03], [26, 0.14], [36, 0.2], [42, 0.24], [55, 0.34], [63, 0.43], [95, 0.67], [100, 0.7],
] as const;

/** Highest sweetness in print of syrup solids by dextrose equivalent; at 0 assumed. */
export const SYRUP_SWEETNESS_HIGH = [
  [0, 0.1], [10, 0.2], [26, 0.33], [36, 0.4], [42, 0.5], [55, 0.57], [63, 0.7], [95, 0.78], [100, 0.8],
] as const;

/** Fructose loses sweetness as it warms: s = 1.5632·exp(−0.011223·T). */
export const FRUCTOSE_SWEETNESS_CONSTANTS = {
  at0C: { value: 1.5632, source: 'tsuzuki-yamazaki-1953', grade: 'derived' },
  fallPerK: { value: 0.011223, source: 'tsuzuki-yamazaki-1953', grade: 'derived' },
} as const satisfies CitedConstants;

/** Nothing is tasted in ice or in steam. */
export const TASTING_TEMPERATURE_DOMAIN_C: Span = [0, 100];
/** The printed points of fructose. */
export const TASTING_TEMPERATURE_TESTED_C: Span = [5, 60];
