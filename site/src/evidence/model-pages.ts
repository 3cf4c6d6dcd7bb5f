import type { Reader } from '../words/shell.js';

/** The evidence pages, in the order they are read. */
export const MODEL_SLUGS = [
  'water',
  'air',
  'boiling',
  'stages',
  'saccharides',
  'syrups',
  'glass',
  'viscosity',
  'moisture',
  'graining',
  'sweetness',
  'density',
  'heat',
  'acids',
  'inversion',
  'browning',
  'thermometer',
  'measures',
  'nutrition',
  'ingredients',
] as const;

/** The last part of an evidence page's address. */
export type ModelSlug = (typeof MODEL_SLUGS)[number];

/** Which functions of the library a page answers for: their residuals are drawn there. */
export const MODEL_FUNCTIONS: Readonly<Record<ModelSlug, readonly string[]>> = {
  water: ['waterVapourPressure', 'waterBoilingPoint', 'waterLatentHeat'],
  air: ['standardPressure', 'stationPressure'],
  boiling: ['boilingPoint', 'drySolidsAtBoil', 'waterActivity', 'cookTarget'],
  stages: ['stageLadder'],
  saccharides: [
    'dextroseEquivalentFromProfile',
    'molarMassFromDextroseEquivalent',
    'molarMassFromProfile',
    'dextroseEquivalentOfChain',
  ],
  syrups: ['blendTwoSyrups', 'syrupFromDried'],
  glass: ['dryGlassTransition', 'glassTransition'],
  viscosity: ['viscosity', 'workingTemperatures'],
  moisture: ['equilibriumRelativeHumidity', 'waterAtRelativeHumidity', 'criticalHumidity'],
  graining: ['grainingTime', 'sucroseSupersaturation', 'solubility', 'dissolvingTemperature'],
  sweetness: ['relativeSweetness', 'boosterForSweetness', 'boosterPairForSweetness'],
  density: [
    'densityFromBrix',
    'baumeFromBrix',
    'refractiveIndexFromBrix',
    'brixTemperatureCorrection',
    'glucoseSyrupDensity',
    'glucoseSyrupCommercialBaume',
    'drySolidsFromCommercialBaume',
    'glucoseSyrupRefractiveIndex',
    'sucroseSolubility',
  ],
  heat: ['specificHeat', 'evaporationHeat', 'hobPower', 'boilDown', 'coolingTime'],
  acids: ['acidity', 'swapAcid', 'acidDose'],
  inversion: ['inversionRate', 'inversion', 'invertedMixture'],
  browning: [],
  thermometer: [],
  measures: [],
  nutrition: ['nutrition', 'glycaemicIndex'],
  ingredients: [],
};

/** What a page says besides its numbers. */
export type ModelWords = {
  readonly title: string;
  readonly lead: string;
  readonly serves: readonly Reader[];
  readonly equations: readonly string[];
  /** How far it may be off, in a sentence. */
  readonly band: string;
  /** What it leaves out, and what else a reader should know. */
  readonly notes: readonly string[];
  /** Decision records, by their last address part. */
  readonly decisions: readonly string[];
};
