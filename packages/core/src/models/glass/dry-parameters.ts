// biome-ignore-all format: one substance a line, to be held against its source

import type { Cited } from '../../foundation/validity/constants.js';
import type { SpeciesId } from '../../matter/species.js';

/** Where a dry substance turns from glass to syrup on warming, °C, and how far print disagrees. */
export type DryGlass = Cited & {
  /** Half-width of the band of this substance alone, K. */
  readonly bandK: number;
  /** Long chains bind water as syrup solids do; the rule for sugars does not hold for them. */
  readonly longChains?: true;
};

/**
 * Onset by calorimetry where there is one; the midpoint lies 4 to 8 K higher. Sucrose stays at 62
 * though rigorously dried samples reach 75: candy is never that dry, and the water constants were
 * fitted with 62. The bands are 4 K, wider where printed values lie further apart.
 */
export const DRY_GLASS = {
  sucrose: { value: 62, source: 'mouritsen-styrbaek-2017', grade: 'secondary', bandK: 4 },
  glucose: { value: 31, source: 'mouritsen-styrbaek-2017', grade: 'secondary', bandK: 4 },
  fructose: { value: 5, source: 'mouritsen-styrbaek-2017', grade: 'secondary', bandK: 6, note: '5 to 16 in print; the low end' },
  maltose: { value: 87, source: 'roos-1993', grade: 'memory', bandK: 6 },
  lactose: { value: 101, source: 'roos-1993', grade: 'memory', bandK: 4 },
  trehalose: { value: 100, source: 'roos-1993', grade: 'memory', bandK: 8 },
  isomaltulose: { value: 62, source: 'recalled-glass', grade: 'memory', bandK: 6 },
  allulose: { value: 5, source: 'assumption', grade: 'assumed', bandK: 20, note: 'as fructose' },
  tagatose: { value: 5, source: 'assumption', grade: 'assumed', bandK: 20, note: 'as fructose' },
  'syrup-oligosaccharides': { value: 125, source: 'recalled-glass', grade: 'memory', bandK: 15, longChains: true, note: 'as maltotriose' },
  isomalt: { value: 62, source: 'recalled-glass', grade: 'memory', bandK: 4, note: '63.6 in print, a midpoint' },
  maltitol: { value: 39, source: 'roos-1993', grade: 'memory', bandK: 6 },
  xylitol: { value: -29, source: 'roos-1993', grade: 'memory', bandK: 4 },
  sorbitol: { value: -9, source: 'roos-1993', grade: 'memory', bandK: 4 },
  mannitol: { value: 11, source: 'yu-1998', grade: 'primary', bandK: 4, note: 'onset 10.7, rounded' },
  erythritol: { value: -45, source: 'recalled-glass', grade: 'memory', bandK: 10, note: '-59.7 in print too' },
  lactitol: { value: 52, source: 'glycodata', grade: 'secondary', bandK: 6, note: 'cut short after 52' },
  glycerol: { value: -83, source: 'recalled-glass', grade: 'memory', bandK: 6 },
  'propylene-glycol': { value: -101, source: 'recalled-glass', grade: 'memory', bandK: 10 },
  'hydrogenated-oligosaccharides': { value: 100, source: 'assumption', grade: 'assumed', bandK: 25, longChains: true, note: 'near syrup solids of DE 36' },
  polydextrose: { value: 95, source: 'recalled-glass', grade: 'memory', bandK: 15, longChains: true },
  inulin: { value: 110, source: 'recalled-glass', grade: 'memory', bandK: 25, longChains: true },
  'citric-acid': { value: 11, source: 'recalled-glass', grade: 'memory', bandK: 4 },
  'malic-acid': { value: -20, source: 'recalled-glass', grade: 'memory', bandK: 8 },
  'tartaric-acid': { value: 17, source: 'recalled-glass', grade: 'memory', bandK: 8 },
  'lactic-acid': { value: -60, source: 'assumption', grade: 'assumed', bandK: 15 },
} as const satisfies Partial<Record<SpeciesId, DryGlass>>;
