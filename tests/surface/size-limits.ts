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
      'acidDose',
      'aeratedDensity',
      'airFromDensity',
      'applyChanges',
      'baumeFromBrix',
      'blendProfiles',
      'blendThreeSyrups',
      'blendTwoSyrups',
      'boilDownPoint',
      'brixFromBaume',
      'brixFromDensity',
      'brixFromRefractiveIndex',
      'brixFromSpecificGravity',
      'brixTemperatureCorrection',
      'candyMassDensity',
      'cavityFromPieceMass',
      'celsiusFromFahrenheit',
      'celsiusFromKelvin',
      'coolingTime',
      'degreeOfPolymerisationFromMolarMass',
      'densityFromBrix',
      'dextroseCrystallises',
      'dextroseEquivalentFromMolarMass',
      'dextroseEquivalentFromProfile',
      'dextroseEquivalentOfChain',
      'drySolidsFromCommercialBaume',
      'drySolidsFromGlucoseSyrupRefractiveIndex',
      'drySolidsFromSucroseRefractometer',
      'evaporationHeat',
      'fahrenheitDifferenceFromKelvin',
      'fahrenheitFromCelsius',
      'feetFromMetres',
      'gFromLb',
      'gFromOz',
      'glucoseSyrupCommercialBaume',
      'glucoseSyrupDensity',
      'glucoseSyrupRefractiveIndex',
      'grainingScore',
      'hobPower',
      'hpaFromPa',
      'inHgFromPa',
      'inversionRate',
      'invertSyrup',
      'isModelRangeError',
      'isNone',
      'kelvinDifferenceFromFahrenheit',
      'kelvinFromCelsius',
      'lbFromG',
      'meanDegreeOfPolymerisation',
      'metresFromFeet',
      'mixSyrups',
      'mlFromUsCup',
      'mlFromUsFluidDram',
      'mlFromUsFluidOunce',
      'mlFromUsTablespoon',
      'mlFromUsTeaspoon',
      'mmHgFromPa',
      'molarMassFromDegreeOfPolymerisation',
      'molarMassFromDextroseEquivalent',
      'molarMassFromProfile',
      'ozFromG',
      'paFromHpa',
      'paFromInHg',
      'paFromMmHg',
      'panCoolingTime',
      'pieceMassFromCavity',
      'profileFromDextroseEquivalent',
      'readingSpread',
      'refractiveIndexFromBrix',
      'specificGravityFromBrix',
      'specificGravityFromCommercialBaume',
      'specificHeat',
      'standardPressure',
      'stationPressure',
      'stemCorrection',
      'sucroseCrystalSpecificHeat',
      'sucroseRefractometerOverread',
      'sucroseSolubility',
      'swapDriedForSyrup',
      'swapSyrupForDried',
      'syrupDefinitions',
      'syrupFromDried',
      'thermalLoad',
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
      'waterDensity',
      'waterLatentHeat',
      'waterVapourPressure',
      'xylitolForDog',
    ],
  },
  'a table of weights': {
    entry: 'index',
    budgetBytes: 3_000,
    names: ['ingredient', 'measureForms', 'measureToGrams', 'swapAcid'],
  },
  'a mixture': {
    entry: 'index',
    budgetBytes: 3_000,
    names: [
      'acidity',
      'altitudeRules',
      'boilDown',
      'boilingPoint',
      'boosterForSweetness',
      'boosterPairForSweetness',
      'bufferForPH',
      'carryOver',
      'chargeDensity',
      'combine',
      'cookTarget',
      'criticalHumidity',
      'dissolutionHeat',
      'dissolvingTemperature',
      'dryGlassTransition',
      'drySolidsAtBoil',
      'equilibriumRelativeHumidity',
      'evaporateTo',
      'glassMargin',
      'glassTransition',
      'glycaemicIndex',
      'glycaemicLoad',
      'grainingTime',
      'grainingTimeInProcess',
      'inversion',
      'invertedMixture',
      'mixture',
      'moisturePickUp',
      'nutrition',
      'polyolShare',
      'powerForRate',
      'relativeSweetness',
      'roundForLabel',
      'scaleMixture',
      'solubility',
      'solutionOf',
      'sourness',
      'stageLadder',
      'stageTarget',
      'stagesApply',
      'sucroseSupersaturation',
      'sugarStage',
      'temperatureAtKitchen',
      'titratableAcidity',
      'viscosity',
      'waterActivity',
      'waterAtGlassTransition',
      'waterAtRelativeHumidity',
      'workingTemperatures',
      'wrapLife',
    ],
  },
  'a batch': { entry: 'index', budgetBytes: 30_000, names: ['planBatch'] },
  'changes of a batch': {
    entry: 'index',
    budgetBytes: 15_000,
    names: ['acidTime', 'swapSyrupForm', 'withoutXylitol'],
  },
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
      'describeLabel',
      'comparePlans',
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
  index: 60_000,
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
const GRAIN = 'the glass transition is 1.8 kB of it, saturated sucrose 1.6';
const TASTE = 'the sweetness of every substance and the dose curves are 0.9 kB of it, checks 0.5';
const DOSES = 'a root finder, and how hot a mass each small dose stands';
const SOLVED = 'the polynomial of sucrose and water, a root finder, range checks with a sentence';
const CUTS = 'what each cut of starch reaches, range checks with a sentence';
const AIR = 'isotherms, whose serves whom, and the boiling model for syrup: solutes, molar masses';
const GLASS = 'the table of dry glass transitions';
const STAGES = 'the chart of stages and what of the mixture is sugar';

/**
 * Exports over the budget of their class, by name; `words/*` is a whole entry. Each was taken apart
 * before it was written down here; decision record 0034 says what was found.
 */
export const CEILINGS: Readonly<Record<string, Ceiling>> = {
  criticalHumidity: { measuredBytes: 5_642, why: `${AIR}; ${GLASS}` },
  equilibriumRelativeHumidity: { measuredBytes: 3_894, why: AIR },
  moisturePickUp: { measuredBytes: 6_603, why: `${AIR}; ${GLASS}; diffusion, the steam equation` },
  waterAtRelativeHumidity: { measuredBytes: 3_959, why: AIR },
  wrapLife: {
    measuredBytes: 7_320,
    why: `${AIR}; ${GLASS}; fifteen films with their sources, what excludes what in a pack`,
  },
  inversion: {
    measuredBytes: 4_445,
    why: 'the law, acids with their constants, the balance of charges, the density of sugar solutions',
  },
  blendThreeSyrups: { measuredBytes: 1_032, why: `three parts against a triangle; ${CUTS}` },
  blendTwoSyrups: { measuredBytes: 1_032, why: `reasons for no answer; ${CUTS}` },
  brixFromBaume: { measuredBytes: 1_284, why: SOLVED },
  brixFromDensity: { measuredBytes: 1_197, why: SOLVED },
  brixFromRefractiveIndex: {
    measuredBytes: 1_123,
    why: 'fit and table, a root finder, range checks with a sentence',
  },
  brixFromSpecificGravity: { measuredBytes: 1_163, why: SOLVED },
  dextroseCrystallises: {
    measuredBytes: 1_765,
    why: `printed profiles of three cuts, two of them to mix; ${CUTS}`,
  },
  drySolidsFromGlucoseSyrupRefractiveIndex: {
    measuredBytes: 1_129,
    why: 'fit of syrup, a root finder, range checks with a sentence',
  },
  drySolidsFromSucroseRefractometer: {
    measuredBytes: 1_552,
    why: 'fits of sucrose and of syrup, a root finder inside a root finder',
  },
  glucoseSyrupCommercialBaume: {
    measuredBytes: 1_339,
    why: 'the polynomial of sucrose and water, the syrup beside it, two scales',
  },
  glucoseSyrupDensity: {
    measuredBytes: 1_155,
    why: 'the polynomial of sucrose and water, the syrup beside it',
  },
  meanDegreeOfPolymerisation: {
    measuredBytes: 1_543,
    why: `printed profiles to mix, molar mass both ways; ${CUTS}`,
  },
  sucroseRefractometerOverread: {
    measuredBytes: 1_520,
    why: 'fits of sucrose and of syrup, a root finder',
  },
  syrupDefinitions: {
    measuredBytes: 1_185,
    why: 'nine definitions, each with its rule and source',
  },
  US_RULES: {
    measuredBytes: 1_219,
    why: 'a whole law: factors, claims, statements and rounding, each with its source',
  },
  boilDown: {
    measuredBytes: 6_717,
    why: `${BOIL}, latent heat; heat of every kind along the way, hobs, losses, turns of the flame`,
  },
  boilingPoint: { measuredBytes: 3_327, why: BOIL },
  carryOver: { measuredBytes: 4_042, why: `${BOIL}, latent heat, specific heat` },
  coolingTime: {
    measuredBytes: 1_224,
    why: 'what cools a piece, three reasons for no answer, and ten range checks with a sentence',
  },
  boosterForSweetness: { measuredBytes: 5_273, why: `${TASTE}; ${DOSES}` },
  boosterPairForSweetness: { measuredBytes: 5_143, why: `${TASTE}; ${DOSES}` },
  cookTarget: { measuredBytes: 3_562, why: `${BOIL}, twice: at the recipe and here` },
  describePlan: { measuredBytes: 24_742, why: 'sentences, names and keys are 14 kB of it' },
  drySolidsAtBoil: { measuredBytes: 3_341, why: BOIL },
  evaporationHeat: {
    measuredBytes: 1_452,
    why: 'the steam equation, a root finder, the table of latent heat',
  },
  hobPower: {
    measuredBytes: 1_625,
    why: 'the steam equation and a root finder, for the kettle test; shares of three hobs',
  },
  grainingTime: { measuredBytes: 3_958, why: GRAIN },
  grainingTimeInProcess: { measuredBytes: 3_989, why: GRAIN },
  mixture: { measuredBytes: 4_065, why: 'the table of ingredients, which may be named' },
  nutrition: {
    measuredBytes: 5_240,
    why: 'two laws, chosen by name: their factors, limits and sources are 2 kB, the tests of claims 1',
  },
  panCoolingTime: { measuredBytes: 1_028, why: 'the pan, and cooling with its reasons' },
  planBatch: {
    measuredBytes: 62_795,
    why: 'fourteen models and the matter under them are 35 kB, the job with its advice 27',
  },
  'index/*': {
    measuredBytes: 80_642,
    why: 'every model twice over: what planBatch needs, and what only one asks who asks for it',
  },
  powerForRate: { measuredBytes: 4_725, why: `${BOIL}, latent heat; hobs and losses` },
  profileFromDextroseEquivalent: {
    measuredBytes: 1_066,
    why: 'printed profiles to mix, and the range check with its sentence',
  },
  relativeSweetness: { measuredBytes: 3_143, why: TASTE },
  stageLadder: {
    measuredBytes: 3_052,
    why: 'the chart of stages, the curve of sucrose, the standard atmosphere, a root finder',
  },
  sugarStage: { measuredBytes: 4_553, why: `${BOIL}; ${STAGES}` },
  temperatureAtKitchen: {
    measuredBytes: 4_482,
    why: `${BOIL}; ${STAGES}; the standard atmosphere`,
  },
  thermalLoad: {
    measuredBytes: 1_206,
    why: 'cited energies with their ranges, and the check of a path with its sentences',
  },
  waterBoilingPoint: {
    measuredBytes: 1_063,
    why: 'the steam equation, a root finder, and the range check with its sentence',
  },
  'words/*': { measuredBytes: 29_569, why: 'sentences, names and keys are 17 kB of it' },
};
