import type { Catalogue } from '../types.js';

/** What a model says when it is asked beyond what it was tested on. */
export const WARNING_WORDS = {
  'outside-tested-range': [
    '{parameter}: {value} here, tested from {low} to {high}. The answer stands, with less behind it.',
  ],
  'species-not-modelled': [
    'How sweet {subject} is, is not known here: {tasteShare} of all but the water is left out of the sweetness. | How {subject} boils and keeps is not known here: {share} of what is dissolved only counts by weight. | Nothing is known here of part of the mix, {share}, so it only counts by weight.',
  ],
  'sugar-decomposes': [
    'At {value} sugar browns and breaks down; from {high} on, time matters as much as temperature.',
  ],
  'shown-from-memory': [
    'How much {subject} goes into a spoon or a cup, {value}, is a figure from memory, not found again in print. | {parameter}, {value}, is a figure from memory, not found again in print.',
    'A scale knows better.',
  ],
} as const satisfies Catalogue['warnings'];

/** What a warning can be about, under the name it has in code, where a field of a batch is not meant. */
export const WARNING_PARAMETERS = {
  brix: 'the strength of the syrup (Brix)',
  dissolvedMassFraction: 'the strength of the syrup',
  fromPressurePa: 'the air pressure the recipe was made for',
  fromTemperatureC: 'the temperature the recipe was made for',
  gramsPerMl: 'what a spoon or a cup holds',
  pressurePa: 'the pressure over the syrup',
  shareOfDissolvedSolids: 'the share of what is dissolved',
  shareOfDrySolids: 'the share of all but the water',
  tastingTemperatureC: 'the temperature it is tasted at',
  temperatureC: 'the temperature of the syrup',
  waterMassFraction: 'the water left',
} as const satisfies Catalogue['warningParameters'];
