import { pathToFileURL } from 'node:url';
import { describe, expect, it } from 'vitest';
import { bundledBytes } from './bundle-size.js';
import { builtFile, ENTRIES, type Entry } from './entries.js';

type SizeClass = {
  readonly entry: Entry;
  readonly limitBytes: number;
  readonly names: readonly string[];
};

/**
 * What one import may cost, minified and gzipped. A new function is written into the class it
 * is meant to belong to; the test says so when that was forgotten.
 */
const CLASSES: Readonly<Record<string, SizeClass>> = {
  'plain numbers': {
    entry: 'index',
    limitBytes: 1_000,
    names: [
      'ModelRangeError',
      'absolutePressure',
      'applyChanges',
      'candyMassDensity',
      'cavityFromPieceMass',
      'celsiusFromFahrenheit',
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
      'lbFromG',
      'metresFromFeet',
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
      'waterBoilingPoint',
      'waterLatentHeat',
      'waterVapourPressure',
    ],
  },
  'a table of weights': {
    entry: 'index',
    limitBytes: 3_000,
    names: ['ingredient', 'measureForms', 'measureToGrams'],
  },
  'a mixture': {
    entry: 'index',
    limitBytes: 3_000,
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
  'a batch': { entry: 'index', limitBytes: 15_000, names: ['planBatch'] },
  documents: {
    entry: 'documents',
    limitBytes: 10_000,
    names: ['batchText', 'kitchenText', 'readBatch', 'readKitchen'],
  },
  words: {
    entry: 'words',
    limitBytes: 15_000,
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
  sources: { entry: 'sources', limitBytes: 15_000, names: ['cite'] },
};

/** A constant, with its sources and notes; in documents with the shapes, which load joined. */
const CONSTANT_LIMIT_BYTES: Readonly<Record<Entry, number>> = {
  index: 1_000,
  documents: 2_000,
  words: 15_000,
  sources: 15_000,
};

/** Everything an entry exports. */
const WHOLE_LIMIT_BYTES: Readonly<Record<Entry, number>> = {
  index: 40_000,
  documents: 12_000,
  words: 15_000,
  sources: 15_000,
};

/** What even the smallest import pays is paid by everyone: it must be next to nothing. */
const FLOOR_LIMIT_BYTES = 200;

type Measured = {
  readonly name: string;
  readonly class: string;
  readonly bytes: number;
  readonly limitBytes: number;
};

async function measureEach(entry: Entry): Promise<readonly Measured[]> {
  const exported: Record<string, unknown> = await import(
    pathToFileURL(builtFile(`${entry}.js`)).href
  );
  const measured: Measured[] = [];
  for (const name of Object.keys(exported).sort()) {
    const [title, limits] =
      typeof exported[name] === 'function'
        ? (Object.entries(CLASSES).find(
            ([, one]) => one.entry === entry && one.names.includes(name),
          ) ?? ['unlisted', { limitBytes: 0 }])
        : ['constant', { limitBytes: CONSTANT_LIMIT_BYTES[entry] }];
    const bytes = await bundledBytes(entry, [name]);
    measured.push({ name, class: title, bytes, limitBytes: limits.limitBytes });
  }
  return measured;
}

const table = (rows: readonly Measured[]): string =>
  [...rows]
    .sort((a, b) => b.bytes - a.bytes)
    .map((row) => `${String(row.bytes).padStart(7)} B  ${row.name} (${row.class})`)
    .join('\n');

describe.each(ENTRIES)('one import of %s', async (entry) => {
  const rows = await measureEach(entry);
  const whole = await bundledBytes(entry, '*');

  it('has a class for every function, and a function for every name', () => {
    console.log(`${entry}: ${whole} B in all\n${table(rows)}`);
    expect(rows.filter((row) => row.class === 'unlisted').map((row) => row.name)).toEqual([]);
    const exported = rows.map((row) => row.name);
    const listed = Object.values(CLASSES).filter((one) => one.entry === entry);
    const gone = listed.flatMap((one) => one.names).filter((name) => !exported.includes(name));
    expect(gone).toEqual([]);
  });

  it('costs no more than its class allows', () => {
    const tooLarge = rows.filter((row) => row.class !== 'unlisted' && row.bytes > row.limitBytes);
    expect(tooLarge).toEqual([]);
  });

  it('leaves the whole within its limit', () => {
    expect(whole).toBeLessThanOrEqual(WHOLE_LIMIT_BYTES[entry]);
  });
});

it('makes nobody pay for what others use', async () => {
  const rows = await measureEach('index');
  expect(Math.min(...rows.map((row) => row.bytes))).toBeLessThanOrEqual(FLOOR_LIMIT_BYTES);
});
