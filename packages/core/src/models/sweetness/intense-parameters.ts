// biome-ignore-all format: one substance a line, to be held against its source

import type { Span } from '../../foundation/results/types.js';
import type { Cited, CitedConstants } from '../../foundation/validity/constants.js';
import type { SpeciesId } from '../../matter/species.js';

/** Sweeteners that are used by the milligram. */
export type IntenseSweetener = 'sucralose' | 'acesulfame-k' | 'aspartame' | 'saccharin' | 'steviol-glycosides';

/** How the sweetness of one intense sweetener levels off: R = Rm·C/(k + C). */
export type IntenseResponse = {
  /** Rm, as sweet as sugar at so many per cent: it never gets sweeter. */
  readonly maximumPercent: Cited;
  /** k, the dose that gives half of that, mg/L. */
  readonly halfMgPerL: Cited;
  /** Where the curve was fitted, as sweet as sugar at so many per cent. */
  readonly testedPercent: Span;
  /** A dose is right within this factor, up or down. */
  readonly rightWithin: Cited;
};

const source = 'dubois-1991', grade = 'memory', spread = 'dose-spread', derived = 'derived';

/**
 * All of it recalled: the form of the curve was read, its numbers were not. Steviol glycosides are
 * taken as rebaudioside A, saccharin as its sodium salt.
 */
export const INTENSE_RESPONSE = {
  sucralose: { maximumPercent: { value: 23.7, source: 'sucralose-response-fit', grade }, halfMgPerL: { value: 298, source: 'sucralose-response-fit', grade }, testedPercent: [2, 9], rightWithin: { value: 1.3, source: spread, grade: derived } },
  'acesulfame-k': { maximumPercent: { value: 11.6, source, grade }, halfMgPerL: { value: 470, source, grade }, testedPercent: [1, 8], rightWithin: { value: 1.3, source: spread, grade: derived } },
  aspartame: { maximumPercent: { value: 16, source, grade }, halfMgPerL: { value: 560, source, grade }, testedPercent: [2, 10], rightWithin: { value: 1.3, source: spread, grade: derived } },
  saccharin: { maximumPercent: { value: 10.1, source, grade, note: 'less sure' }, halfMgPerL: { value: 118, source, grade, note: 'less sure' }, testedPercent: [1, 8], rightWithin: { value: 2, source: spread, grade: derived } },
  'steviol-glycosides': { maximumPercent: { value: 10, source, grade, note: 'rebaudioside A' }, halfMgPerL: { value: 200, source, grade, note: 'rebaudioside A' }, testedPercent: [1, 8], rightWithin: { value: 1.3, source: spread, grade: derived } },
} as const satisfies Readonly<Record<IntenseSweetener, IntenseResponse>>;

/** Highest share the European Union is recalled to allow in sweets without added sugar, mg/kg. */
export const EU_SWEETENER_CAPS = {
  'acesulfame-k': { value: 500, source: 'eu-sweetener-caps', grade },
  aspartame: { value: 1000, source: 'eu-sweetener-caps', grade },
  sucralose: { value: 1000, source: 'eu-sweetener-caps', grade },
} as const satisfies Partial<Record<IntenseSweetener, Cited>>;

/** How strong the sweet is in the mouth as it dissolves, g of it in 100 mL. */
export const TASTING_CONSTANTS = {
  concentrationGPer100Ml: { value: 10, source: 'assumption', grade: 'assumed', note: 'nobody has measured it; 5 to 15' },
  boosterLowGPer100Ml: { value: 5, source: 'assumption', grade: 'assumed' },
  ceilingShare: { value: 0.9, source: 'assumption', grade: 'assumed', note: 'nearer the maximum a dose means nothing' },
} as const satisfies CitedConstants;

/** Glucose gains on sucrose as both get stronger: s = 1 − 0.4206·exp(−0.07481·R). */
export const GLUCOSE_STRENGTH_CONSTANTS = {
  short: { value: 0.4206, source: 'glucose-strength-fit', grade: derived },
  fadePerPercent: { value: 0.07481, source: 'glucose-strength-fit', grade: derived },
} as const satisfies CitedConstants;

/** How far two sweeteners in company may pass their sum, at equal parts. */
export const SYNERGY_MOST = {
  acesulfameKWithAspartame: { value: 1.35, source: 'recalled-sweetness', grade },
  xylitolWithSorbitol: { value: 1.2, source: 'recalled-sweetness', grade, note: '1.05 typical' },
} as const satisfies CitedConstants;

/** The pairs meant. */
export const SYNERGY_PAIRS = {
  acesulfameKWithAspartame: ['acesulfame-k', 'aspartame'],
  xylitolWithSorbitol: ['xylitol', 'sorbitol'],
} as const satisfies Readonly<Record<keyof typeof SYNERGY_MOST, readonly [SpeciesId, SpeciesId]>>;

/** Slow to come and slow to go: not to be offered alone up to the sweetness of sugar. */
export const LINGERING: readonly IntenseSweetener[] = ['steviol-glycosides'];

/** Strengths in the mouth that can be asked, g in 100 mL, and those a sweet has. */
export const TASTING_CONCENTRATION_DOMAIN: Span = [0.5, 50];
/** From a sweet kept in the cheek to one that is chewed. */
export const TASTING_CONCENTRATION_TESTED: Span = [5, 15];
/** How sweet a solution can be asked to be, as sugar at so many per cent. */
export const SUCROSE_EQUIVALENCE_DOMAIN: Span = [0, 60];
/** The printed rows of glucose end here; at 40 both are equal. */
export const SUCROSE_EQUIVALENCE_TESTED: Span = [10, 30];
