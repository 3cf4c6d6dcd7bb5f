import type { Catalogue } from '../types.js';

/** What a model says when it is asked beyond what it was tested on. */
export const WARNING_WORDS = {
  'outside-tested-range': [
    '{parameter}: {value} here, tested from {low} to {high}. The answer stands, with less behind it.',
  ],
  'species-not-modelled': [
    'These rules give no energy for {subject}: {labelShare} of the {sweet} is left out of it. | How sour {subject} is, is not known here: {sourShare} of the acids and their salts is left out of the sourness. | How sweet {subject} is, is not known here: {tasteShare} of all but the water is left out of the sweetness. | How {subject} boils and keeps is not known here: {share} of what is dissolved only counts by weight. | Nothing is known here of part of the mix, {share}, so it only counts by weight.',
  ],
  'sugar-decomposes': [
    'At {value} sugar browns and breaks down; from {high} on, time matters as much as temperature.',
  ],
  'shown-from-memory': [
    'What {sweetener} adds to the sweetness, {value} with sugar at 1, is worked out with figures from memory, not found again in print. Start with half and taste. | How much {solute} water holds, {value}, is a figure from memory, not found again in print. | How much {subject} goes into a spoon or a cup, {value}, is a figure from memory, not found again in print. A scale knows better. | {parameter}, {value}, is a figure from memory, not found again in print.',
  ],
} as const satisfies Catalogue['warnings'];

/** What a warning can be about, under the name it has in code, where a field of a batch is not meant. */
export const WARNING_PARAMETERS = {
  addedSweetness: 'what a sweetener adds to the sweetness',
  biotNumber: 'how far the middle of a piece lags its surface (Biot number)',
  brix: 'the strength of the syrup (Brix)',
  dissolvedMassFraction: 'the strength of the syrup',
  fromPressurePa: 'the air pressure the recipe was made for',
  fromTemperatureC: 'the temperature the recipe was made for',
  gramsPerMl: 'what a spoon or a cup holds',
  intenseSweetnessPercent: 'what one intense sweetener adds, as sweet as sugar at so many per cent',
  otherSolidsPerWater: 'the grams of other solids on a gram of water',
  pressurePa: 'the pressure over the syrup',
  shareOfAcids: 'the share of the acids and their salts',
  shareOfDissolvedSolids: 'the share of what is dissolved',
  shareOfDrySolids: 'the share of all but the water',
  shareOfLabel: 'the share of the sweet',
  solubleMassFraction: 'the strength of the saturated syrup',
  sucroseEquivalencePercent: 'how sweet it is in the mouth, as sugar at so many per cent',
  tastingConcentrationGPer100Ml: 'how strong it is in the mouth',
  tastingTemperatureC: 'the temperature it is tasted at',
  temperatureC: 'the temperature of the syrup',
  waterMassFraction: 'the water left',
} as const satisfies Catalogue['warningParameters'];
