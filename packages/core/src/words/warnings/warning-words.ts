import type { Catalogue } from '../types.js';

/** What a model says when it is asked beyond what it was tested on. */
export const WARNING_WORDS = {
  'outside-tested-range': [
    '{parameter}: {value} here, tested from {low} to {high}. The answer stands, with less behind it.',
  ],
  'species-not-modelled': [
    'Nothing is known here of {subject}, {share} of it, so it only counts by weight. | Nothing is known here of part of the mix, {share}, so it only counts by weight.',
  ],
  'sugar-decomposes': [
    'At {value} sugar browns and breaks down; from {high} on, time matters as much as temperature.',
  ],
  'shown-from-memory': [
    '{parameter}: a figure from memory stands behind it, not found again in print.',
  ],
} as const satisfies Catalogue['warnings'];
