// One ordinary call of every public function of the library: sixty parts of sugar to forty of
// glucose syrup solids, in a kitchen at 1 500 m.

/** @param vitrose - The library, as it is built. */
export function sampleCalls(vitrose) {
  const thin = vitrose.mixture([
    { ingredient: 'sucrose', massG: 600 },
    { ingredient: 'dried-glucose-syrup', massG: 417 },
    { ingredient: 'water', massG: 400 },
  ]);
  const sweet = vitrose.evaporateTo(thin, { drySolidsMassFraction: 0.975 });
  const sugarFree = vitrose.solutionOf('isomalt', { drySolidsMassFraction: 0.98 });
  const acid = { conversion: 'acid' };
  const { profile } = vitrose.profileFromDextroseEquivalent(42, acid);
  const checks = { boilingWaterReadingC: 97, waterBoilsAtC: 99.2, iceWaterReadingC: 2 };
  const { path: boilPath } = vitrose.boilDown(thin, boilHere);
  const batch = {
    format: 'vitrose.batch/1',
    formula: [{ ingredient: 'sucrose', massG: 200 }],
    cook: { toSeaLevelC: 148 },
  };
  const sour = {
    ...batch,
    formula: [
      { ingredient: 'sucrose', massG: 200 },
      { ingredient: 'dried-glucose-syrup', massG: 130 },
      { ingredient: 'water', massG: 100 },
      { ingredient: 'citric-acid', massG: 4, when: 'off-heat' },
    ],
  };
  const withXylitol = {
    ...batch,
    formula: [
      { ingredient: 'isomalt', massG: 300 },
      { ingredient: 'xylitol', massG: 30 },
    ],
  };
  const one = (name, value) => {
    const call = vitrose[name];
    return [name, () => call(value)];
  };
  return Object.fromEntries([
    ...['waterVapourPressure', 'waterLatentHeat', 'celsiusFromFahrenheit'].map((name) =>
      one(name, 110),
    ),
    ...['fahrenheitFromCelsius', 'fahrenheitDifferenceFromKelvin', 'sucroseSolubility'].map(
      (name) => one(name, 60),
    ),
    ...['kelvinDifferenceFromFahrenheit', 'feetFromMetres', 'metresFromFeet'].map((name) =>
      one(name, 60),
    ),
    ...['gFromLb', 'gFromOz', 'lbFromG', 'ozFromG'].map((name) => one(name, 12)),
    ...['hpaFromPa', 'inHgFromPa', 'mmHgFromPa'].map((name) => one(name, 84_500)),
    ...['paFromHpa', 'paFromInHg', 'paFromMmHg'].map((name) => one(name, 29)),
    ...['molarMassFromDextroseEquivalent', 'typicalProfile'].map((name) => one(name, 42)),
    one('waterBoilingPoint', 84_500),
    one('standardPressure', 1_500),
    one('chargeDensity', 0.76),
    one('ingredient', 'isomalt'),
    one('measureForms', 'sucrose'),
    one('isNone', { kind: 'none', reason: 'below-the-boil' }),
    one('isModelRangeError', new RangeError('of another kind')),
    one('combine', [sweet, thin]),
    one('dryGlassTransition', sweet),
    one('glassTransition', sweet),
    one('workingTemperatures', sweet),
    one('relativeSweetness', sweet),
    one('grainingScore', { days: 79, targetDays: 365 }),
    ...keepingCalls(vitrose, sweet, sugarFree),
    one('stagesApply', sweet),
    one('boilingPoint', sweet),
    one('readingSpread', [143, 151]),
    one('glycaemicIndex', sweet),
    one('xylitolForDog', { eatenG: 3, xylitolMassFraction: 0.97, dogKg: 29 }),
    one('planBatch', vitrose.applyChanges(batch, water())),
    one('acidity', { waterG: 25, acids: { 'citric-acid': 10 } }),
    one('bufferForPH', { waterG: 25, acids: { 'citric-acid': 10 } }),
    one('acidDose', { acid: 'citric-acid', finishedMassG: 500 }),
    one('sourness', { 'citric-acid': 5, 'malic-acid': 4 }),
    one('titratableAcidity', { 'citric-acid': 5, 'malic-acid': 4 }),
    one('swapAcid', { from: 'citric-acid', to: 'malic-acid', massG: 5, by: 'sourness' }),
    one('inversionRate', { pH: 3, temperatureC: 110, waterGPerMl: 0.3 }),
    one('thermalLoad', boil),
    one('stationPressure', { seaLevelPressurePa: 101_900, elevationM: 1_500 }),
    one('absolutePressure', { pressurePa: 101_325, underVacuumPa: 70_000 }),
    one('altitudeRules', { temperatureC: 148, elevationM: 1_500 }),
    one('candyMassDensity', { state: 'hot' }),
    one('cavityFromPieceMass', { massG: 5 }),
    one('pieceMassFromCavity', { cavityMl: 4 }),
    one('densityFromBrix', { brix: 70, temperatureC: 60 }),
    ...syrupCalls(profile).map(([name, value]) => one(name, value)),
    ...densityCalls.map(([name, value]) => one(name, value)),
    one('measureToGrams', { ingredient: 'sucrose', unit: 'us-cup', quantity: 2 }),
    one('molarMassFromProfile', { profile, dextroseEquivalent: 42 }),
    one('mixture', [
      { ingredient: 'sucrose', massG: 600 },
      { ingredient: 'dried-glucose-syrup', massG: 417 },
      { ingredient: 'water', massG: 400 },
    ]),
    one('stageLadder', { elevationM: 1_500 }),
    one('stageTarget', { stage: 'hard-crack', aim: 'middle' }),
    one('sugarStage', { temperatureC: 143, pressurePa: 84_500, mixture: sweet }),
    one('temperatureAtKitchen', { temperatureC: 148, elevationM: 1_500 }),
    one('stemCorrection', { readingC: 150, exposedK: 100, stemC: 60, liquid: 'spirit' }),
    one('thermometerLag', { readsInS: 20, riseKPerMin: 8 }),
    one('thermometerReading', { trueC: 148, ...checks }),
    one('trueFromReading', { readingC: 143, ...checks }),
    [
      'applyChanges',
      () => vitrose.applyChanges(batch, [{ path: '/cook/toSeaLevelC', value: 150 }]),
    ],
    ['cookTarget', () => vitrose.cookTarget(sweet, upTheHill)],
    ['dextroseEquivalentFromProfile', () => vitrose.dextroseEquivalentFromProfile(profile, acid)],
    ['drySolidsAtBoil', () => vitrose.drySolidsAtBoil(sweet, { temperatureC: 148 })],
    ['evaporateTo', () => vitrose.evaporateTo(thin, { drySolidsMassFraction: 0.975 })],
    ['profileFromDextroseEquivalent', () => vitrose.profileFromDextroseEquivalent(42, acid)],
    ['glycaemicLoad', () => vitrose.glycaemicLoad(sweet, { pieceG: 4 })],
    ['nutrition', () => vitrose.nutrition(sweet, { rules: 'us', servingG: 15 })],
    ['polyolShare', () => vitrose.polyolShare(sugarFree, { pieceG: 4 })],
    ['roundForLabel', () => vitrose.roundForLabel(58.8, 'energyKcal', 'us')],
    ['scaleMixture', () => vitrose.scaleMixture(sweet, 2)],
    ['solutionOf', () => vitrose.solutionOf('sucrose', { drySolidsMassFraction: 0.85 })],
    one('specificHeat', { brix: 76, temperatureC: 90 }),
    one('sucroseCrystalSpecificHeat', 20),
    one('evaporationHeat', { temperatureC: 120, pressurePa: 84_500 }),
    one('dissolutionHeat', thin),
    one('hobPower', kettleTest),
    one('coolingTime', { massG: 5.8, fromC: 140, toC: 35 }),
    one('panCoolingTime', { massG: 1_000, panDiameterMm: 200, fromC: 143, toC: 125 }),
    ['boilDown', () => vitrose.boilDown(thin, boilHere)],
    ['boilDownPoint', () => vitrose.boilDownPoint(boilPath, { temperatureC: 130 })],
    ['carryOver', () => vitrose.carryOver(thin, { temperatureC: 143, panMassG: 1_000 })],
    ['powerForRate', () => vitrose.powerForRate(thin, slowly)],
    ['inversion', () => vitrose.inversion(thin, { path: boil, acids: cream })],
    ['invertedMixture', () => vitrose.invertedMixture(sweet, { invertedFraction: 0.1 })],
    ['waterActivity', () => vitrose.waterActivity(sweet, { temperatureC: 25 })],
    ['criticalHumidity', () => vitrose.criticalHumidity(sweet, { storeC: 25 })],
    [
      'equilibriumRelativeHumidity',
      () => vitrose.equilibriumRelativeHumidity(sweet, { temperatureC: 25 }),
    ],
    ['glassMargin', () => vitrose.glassMargin(sweet, { storeC: 25 })],
    ['moisturePickUp', () => vitrose.moisturePickUp(sweet, barePiece)],
    ['viscosity', () => vitrose.viscosity(sweet, { temperatureC: 120 })],
    [
      'waterAtGlassTransition',
      () => vitrose.waterAtGlassTransition(sweet, { glassTransitionC: 25 }),
    ],
    ['waterAtRelativeHumidity', () => vitrose.waterAtRelativeHumidity(sweet, room)],
    ['wrapLife', () => vitrose.wrapLife(sweet, wrappedPiece)],
    ['acidTime', () => vitrose.acidTime(sour, 'first-boil')],
    ['swapSyrupForm', () => vitrose.swapSyrupForm(sour, 1)],
    ['withoutXylitol', () => vitrose.withoutXylitol(withXylitol)],
  ]);
}

/** A boil of twenty-five minutes, a point each minute. */
const boil = Array.from({ length: 26 }, (_, minute) => ({
  timeS: 60 * minute,
  temperatureC: 108 + 0.06 * minute ** 2,
  drySolidsMassFraction: 0.72 + 0.0102 * minute,
}));
const cream = { 'potassium-hydrogen-tartrate': 1 };

const room = { relativeHumidity: 0.55, temperatureC: 25 };
const barePiece = { ...room, pieceG: 4, areaCm2: 12, hours: 24 };
const wrappedPiece = {
  pieceG: 12,
  film: 'oriented-pp',
  areaCm2: 60,
  storeC: 25,
  relativeHumidity: 0.75,
};
const kettleTest = { kind: 'timed', waterG: 500, fromC: 20, boilsInMin: 4 };
const boilHere = {
  hob: kettleTest,
  targetC: 143,
  pressurePa: 84_500,
  panMassG: 1_000,
  panDiameterMm: 200,
};
const slowly = { temperatureC: 143, rateKPerMin: 4, hob: kettleTest };

const upTheHill = { temperatureC: 148, fromPressurePa: 101_325, toPressurePa: 84_500 };

/** A second line for the smallest batch there is. */
const water = () => [
  {
    path: '/formula',
    value: [
      { ingredient: 'sucrose', massG: 200 },
      { ingredient: 'water', massG: 80 },
    ],
  },
];

const syrup = { drySolidsMassFraction: 0.803, dextroseEquivalent: 42 };
const dextrose = { drySolidsMassFraction: 0.91, dextroseEquivalent: 100 };
const maltodextrin = { drySolidsMassFraction: 0.95, dextroseEquivalent: 10 };
const dried = { drySolidsMassFraction: 0.96 };
const target = { massG: 1_000, drySolidsMassFraction: 0.8, dextroseEquivalent: 52 };
const thick = { massG: 1_000, drySolidsMassFraction: 0.83, dextroseEquivalent: 42 };

/** Syrups made up, swapped, inverted and named. */
const syrupCalls = (profile) => [
  ['blendTwoSyrups', { a: syrup, b: dextrose, target }],
  ['blendThreeSyrups', { a: syrup, b: dextrose, c: maltodextrin, target: thick }],
  [
    'mixSyrups',
    [
      { massG: 800, ...syrup },
      { massG: 150, ...dextrose },
    ],
  ],
  ['blendProfiles', [{ profile, drySolidsG: 640 }]],
  ['syrupFromDried', { dried, target: { massG: 1_000, drySolidsMassFraction: 0.8 } }],
  ['swapSyrupForDried', { syrupG: 300, syrup, dried, recipeWaterG: 100 }],
  ['swapDriedForSyrup', { driedG: 251, syrup, dried, recipeWaterG: 100 }],
  ['invertSyrup', { sucroseG: 1_000, invertedFraction: 0.5 }],
  ['syrupDefinitions', syrup],
  ['dextroseCrystallises', syrup],
  ['meanDegreeOfPolymerisation', { dextroseEquivalent: 42, conversion: 'acid' }],
  ['degreeOfPolymerisationFromMolarMass', 429],
  ['dextroseEquivalentFromMolarMass', 429],
  ['dextroseEquivalentOfChain', 3],
  ['molarMassFromDegreeOfPolymerisation', 3],
];

/** Density, hydrometers and refractometers. */
const densityCalls = [
  ['waterDensity', 60],
  ['brixFromDensity', { densityKgPerM3: 1_320, temperatureC: 60 }],
  ['specificGravityFromBrix', 65],
  ['brixFromSpecificGravity', 1.32],
  ['baumeFromBrix', 65],
  ['brixFromBaume', 35],
  ['refractiveIndexFromBrix', 65],
  ['brixFromRefractiveIndex', 1.45],
  ['brixTemperatureCorrection', { brix: 65, temperatureC: 17 }],
  ['glucoseSyrupDensity', { ...syrup, temperatureC: 60 }],
  ['glucoseSyrupRefractiveIndex', { drySolidsMassFraction: 0.6, temperatureC: 20 }],
  ['drySolidsFromGlucoseSyrupRefractiveIndex', { refractiveIndex: 1.45, temperatureC: 20 }],
  ['sucroseRefractometerOverread', { drySolidsMassFraction: 0.6, dextroseEquivalent: 42 }],
  ['drySolidsFromSucroseRefractometer', { brix: 62, dextroseEquivalent: 42 }],
  ['specificGravityFromCommercialBaume', 43],
  ['glucoseSyrupCommercialBaume', syrup],
  ['drySolidsFromCommercialBaume', { commercialBaume: 43, dextroseEquivalent: 42 }],
  ['aeratedDensity', { densityGPerMl: 1.5, airVolumeFraction: 0.15 }],
  ['airFromDensity', { densityGPerMl: 1.25, airFreeGPerMl: 1.5 }],
];

/** Graining of a sugar sweet, and what makes a sugar-free one sweeter. */
const keepingCalls = (vitrose, sweet, sugarFree) => [
  ['solubility', () => vitrose.solubility('glucose', 40)],
  ['dissolvingTemperature', () => vitrose.dissolvingTemperature('sucrose', { massFraction: 0.7 })],
  ['sucroseSupersaturation', () => vitrose.sucroseSupersaturation(sweet, { temperatureC: 25 })],
  ['grainingTime', () => vitrose.grainingTime(sweet, { temperatureC: 25 })],
  ['grainingTimeInProcess', () => vitrose.grainingTimeInProcess(sweet, { formingC: [60, 110] })],
  ['boosterForSweetness', () => vitrose.boosterForSweetness(sugarFree, boost)],
  ['boosterPairForSweetness', () => vitrose.boosterPairForSweetness(sugarFree, sweetAsSugar)],
];

const sweetAsSugar = { targetRelativeSweetness: 1 };
const boost = { sweetener: 'sucralose', ...sweetAsSugar };
