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
  const acid = { conversion: 'acid' };
  const { profile } = vitrose.profileFromDextroseEquivalent(42, acid);
  const checks = { boilingWaterReadingC: 97, waterBoilsAtC: 99.2, iceWaterReadingC: 2 };
  const batch = {
    format: 'vitrose.batch/1',
    formula: [{ ingredient: 'sucrose', massG: 200 }],
    cook: { toSeaLevelC: 148 },
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
    one('relativeSweetness', sweet),
    one('stagesApply', sweet),
    one('boilingPoint', sweet),
    one('readingSpread', [143, 151]),
    one('planBatch', vitrose.applyChanges(batch, water())),
    one('stationPressure', { seaLevelPressurePa: 101_900, elevationM: 1_500 }),
    one('absolutePressure', { pressurePa: 101_325, underVacuumPa: 70_000 }),
    one('altitudeRules', { temperatureC: 148, elevationM: 1_500 }),
    one('candyMassDensity', { state: 'hot' }),
    one('cavityFromPieceMass', { massG: 5 }),
    one('pieceMassFromCavity', { cavityMl: 4 }),
    one('densityFromBrix', { brix: 70, temperatureC: 60 }),
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
    ['scaleMixture', () => vitrose.scaleMixture(sweet, 2)],
    ['solutionOf', () => vitrose.solutionOf('sucrose', { drySolidsMassFraction: 0.85 })],
    ['waterActivity', () => vitrose.waterActivity(sweet, { temperatureC: 25 })],
  ]);
}

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
