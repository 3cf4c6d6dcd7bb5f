// biome-ignore-all format: one acid a line, to be held against its source

import type { CitedConstants, CitedRange } from '../../foundation/validity/constants.js';

const sourness = 'recalled-acids';
const practice = 'common-practice';

/**
 * Grams as sour as a gram of citric acid, all without water. Judged by mouths: sweetness, flavour
 * and saliva move it. One page prints malic acid the other way round, as 78 to 83 per cent as tart.
 */
export const EQUAL_SOURNESS = {
  'citric-acid': { value: 1, low: 1, high: 1, source: 'definition', grade: 'derived' },
  'malic-acid': { value: 0.85, low: 0.78, high: 0.88, source: sourness, grade: 'memory' },
  'tartaric-acid': { value: 0.9, low: 0.8, high: 1, source: sourness, grade: 'memory' },
  'lactic-acid': { value: 1.188, source: sourness, grade: 'memory', note: '1.35 of the 88 per cent acid' },
} as const satisfies Readonly<Record<string, CitedRange>>;

/** How far apart mouths are, as a fraction either way. */
export const SOURNESS_CONSTANTS = {
  plusMinus: { value: 0.15, source: sourness, grade: 'memory' },
} as const satisfies CitedConstants;

/** What boiled sweets hold, g for each 100 g of finished sweet, without water. */
export const ACID_DOSES = {
  'citric-acid': { value: 1, low: 0.5, high: 2, source: practice, grade: 'practice' },
  'malic-acid': { value: 0.9, low: 0.4, high: 1.8, source: practice, grade: 'practice' },
  'tartaric-acid': { value: 0.9, low: 0.4, high: 1.8, source: practice, grade: 'practice' },
  'lactic-acid': { value: 1.232, low: 0.528, high: 2.2, source: practice, grade: 'practice', note: '1.4, 0.6 and 2.5 of the 88 per cent acid' },
} as const satisfies Readonly<Record<string, CitedRange>>;
