import type { Entry } from './entries.js';

/** Exports that belong together, and what one import of any of them is meant to cost. */
export type SizeClass = {
  readonly entry: Entry;
  readonly budgetBytes: number;
  readonly names: readonly string[];
};

/**
 * What one import may cost, minified and gzipped. A new function is written into the class it
 * is meant to belong to; the test says so when that was forgotten.
 */
export const CLASSES: Readonly<Record<string, SizeClass>> = {
  'plain numbers': {
    entry: 'index',
    budgetBytes: 1_000,
    names: [
      'ModelRangeError',
      'absolutePressure',
      'applyChanges',
      'candyMassDensity',
      'cavityFromPieceMass',
      'celsiusFromFahrenheit',
      'celsiusFromKelvin',
      'densityFromBrix',
      'dextroseEquivalentFromProfile',
      'fahrenheitDifferenceFromKelvin',
      'fahrenheitFromCelsius',
      'feetFromMetres',
      'gFromLb',
      'gFromOz',
      'hpaFromPa',
      'inHgFromPa',
      'isModelRangeError',
      'isNone',
      'kelvinDifferenceFromFahrenheit',
      'kelvinFromCelsius',
      'lbFromG',
      'metresFromFeet',
      'mlFromUsCup',
      'mlFromUsFluidDram',
      'mlFromUsFluidOunce',
      'mlFromUsTablespoon',
      'mlFromUsTeaspoon',
      'mmHgFromPa',
      'molarMassFromDextroseEquivalent',
      'molarMassFromProfile',
      'ozFromG',
      'paFromHpa',
      'paFromInHg',
      'paFromMmHg',
      'pieceMassFromCavity',
      'profileFromDextroseEquivalent',
      'readingSpread',
      'standardPressure',
      'stationPressure',
      'stemCorrection',
      'sucroseSolubility',
      'thermometerLag',
      'thermometerReading',
      'trueFromReading',
      'typicalProfile',
      'usCupsFromMl',
      'usFluidDramsFromMl',
      'usFluidOuncesFromMl',
      'usTablespoonsFromMl',
      'usTeaspoonsFromMl',
      'waterBoilingPoint',
      'waterLatentHeat',
      'waterVapourPressure',
    ],
  },
  'a table of weights': {
    entry: 'index',
    budgetBytes: 3_000,
    names: ['ingredient', 'measureForms', 'measureToGrams'],
  },
  'a mixture': {
    entry: 'index',
    budgetBytes: 3_000,
    names: [
      'altitudeRules',
      'boilingPoint',
      'chargeDensity',
      'combine',
      'cookTarget',
      'dryGlassTransition',
      'drySolidsAtBoil',
      'evaporateTo',
      'glassTransition',
      'mixture',
      'relativeSweetness',
      'scaleMixture',
      'solutionOf',
      'stageLadder',
      'stageTarget',
      'stagesApply',
      'sugarStage',
      'temperatureAtKitchen',
      'waterActivity',
    ],
  },
  'a batch': { entry: 'index', budgetBytes: 15_000, names: ['planBatch'] },
  documents: {
    entry: 'documents',
    budgetBytes: 10_000,
    names: ['batchText', 'kitchenText', 'readBatch', 'readKitchen'],
  },
  words: {
    entry: 'words',
    budgetBytes: 15_000,
    names: [
      'caution',
      'coldWaterDrop',
      'describePlan',
      'explain',
      'explainAdvice',
      'explainError',
      'explainProblem',
      'formatFraction',
      'formatMass',
      'formatMoisture',
      'formatPressure',
      'formatTemperature',
      'gradeWord',
      'ingredientName',
      'momentWord',
      'notTheSameAs',
      'remedyLabel',
      'severityWord',
      'shopName',
      'speciesName',
      'stageName',
      'stageSentence',
      'unitName',
    ],
  },
  sources: { entry: 'sources', budgetBytes: 15_000, names: ['cite'] },
};

/** A constant, with its sources and notes; in documents with the shapes, which load joined. */
export const CONSTANT_BUDGET_BYTES: Readonly<Record<Entry, number>> = {
  index: 1_000,
  documents: 2_000,
  words: 15_000,
  sources: 15_000,
};

/** Everything an entry exports. */
export const WHOLE_BUDGET_BYTES: Readonly<Record<Entry, number>> = {
  index: 40_000,
  documents: 12_000,
  words: 15_000,
  sources: 15_000,
};

/** What even the smallest import pays is paid by everyone: it must be next to nothing. */
export const FLOOR_LIMIT_BYTES = 200;

/** An export, or a whole entry, that costs more than was wanted, and why. */
export type Ceiling = { readonly measuredBytes: number; readonly why: string };

/** Room over what was measured: a line or two, not a feature. */
export const ROOM = 1.03;

const BOIL = 'what each solute does to water, molar masses, the steam equation, a root finder';
const STAGES = 'the chart of stages and what of the mixture is sugar';

/**
 * Exports over the budget of their class, by name; `words/*` is a whole entry. Each was taken apart
 * before it was written down here; decision record 0034 says what was found.
 */
export const CEILINGS: Readonly<Record<string, Ceiling>> = {
  boilingPoint: { measuredBytes: 3_327, why: BOIL },
  cookTarget: { measuredBytes: 3_562, why: `${BOIL}, twice: at the recipe and here` },
  describePlan: { measuredBytes: 18_979, why: 'sentences, names and keys are 10.4 kB of it' },
  drySolidsAtBoil: { measuredBytes: 3_341, why: BOIL },
  mixture: { measuredBytes: 4_065, why: 'the table of ingredients, which may be named' },
  planBatch: { measuredBytes: 32_897, why: 'models and matter alone are 13.4 kB, the job 19' },
  profileFromDextroseEquivalent: {
    measuredBytes: 1_066,
    why: 'printed profiles to mix, and the range check with its sentence',
  },
  stageLadder: {
    measuredBytes: 3_052,
    why: 'the chart of stages, the curve of sucrose, the standard atmosphere, a root finder',
  },
  sugarStage: { measuredBytes: 4_553, why: `${BOIL}; ${STAGES}` },
  temperatureAtKitchen: {
    measuredBytes: 4_482,
    why: `${BOIL}; ${STAGES}; the standard atmosphere`,
  },
  waterBoilingPoint: {
    measuredBytes: 1_063,
    why: 'the steam equation, a root finder, and the range check with its sentence',
  },
  'words/*': { measuredBytes: 23_264, why: 'sentences, names and keys are 13 kB of it' },
};
