import type { Span } from '../../foundation/results/types.js';
import type { Problem } from './problems.js';

/**
 * What each number of a batch or kitchen document can be, in the unit of its field. `*` stands for
 * every line or name. Beyond these no kitchen goes; each model warns or refuses within them.
 */
export const BATCH_LIMITS = {
  'formula/*/massG': [1e-6, 100_000],
  'formula/*/measure/quantity': [1e-4, 100_000],
  'formula/*/shareOfDrySolids': [0, 1],
  'formula/*/shareOfFinished': [0, 1],
  'formula/*/shareOfIngredient/share': [0, 20],
  'formula/*/makeUpWaterFor/drySolidsMassFraction': [0.01, 1],
  'formula/*/drySolidsMassFraction': [0, 1],
  'formula/*/dextroseEquivalent': [1, 100],
  'formula/*/profile/dp1': [0, 1],
  'formula/*/profile/dp2': [0, 1],
  'formula/*/profile/dp3': [0, 1],
  'formula/*/profile/dp4plus': [0, 1],
  'formula/*/when/atC': [20, 230],
  'cook/toSeaLevelC': [100, 230],
  'cook/toMoistureMassFraction': [0.0005, 0.3],
  'cook/toGlassTransitionC': [-40, 120],
  'cook/underVacuumPa': [0, 110_000],
  'kitchen/elevationM': [-430, 9_000],
  'kitchen/pressurePa': [30_000, 110_000],
  'kitchen/seaLevelPressurePa': [85_000, 110_000],
  'kitchen/waterBoilsAtC': [65, 105],
  'thermometer/boilingWaterReadingC': [60, 110],
  'thermometer/iceWaterReadingC': [-15, 15],
  'thermometer/maxC': [50, 500],
  'thermometer/readsInS': [0.1, 600],
  'hob/powerW': [0, 20_000],
  'hob/waterG': [10, 20_000],
  'hob/fromC': [0, 60],
  'hob/boilsInMin': [0.1, 240],
  'pan/diameterMm': [20, 1_500],
  'pan/capacityMl': [20, 200_000],
  'pan/emptyMassG': [0, 50_000],
  'room/temperatureC': [-40, 60],
  'room/relativeHumidity': [0, 1],
  'store/temperatureC': [-40, 60],
  'store/relativeHumidity': [0, 1],
  'store/forDays': [0, 3_650],
  'wrap/areaCm2': [0.1, 10_000],
  'wrap/sealFactor': [1, 10],
  'water/alkalinityMmolPerL': [0, 20],
  'mould/cavityMl': [0.05, 2_000],
  'mould/cavities': [1, 2_000],
  'mould/moulds': [1, 1_000],
  'mould/maxC': [50, 500],
  'pieces/massG': [1e-6, 100_000],
  'pieces/cavityMl': [0.05, 2_000],
  'pieces/count': [1, 1_000_000],
  'pieces/finishedMassG': [1e-6, 100_000],
  'pieces/lossFraction': [0, 0.9],
  'pieces/breakFraction': [0, 0.9],
  'ingredients/*/drySolidsMassFraction': [0, 1],
  'ingredients/*/solids/*': [0, 1],
  'ingredients/*/apart/*': [0, 1],
  'ingredients/*/dextroseEquivalent': [1, 100],
  'ingredients/*/maxAdditionC': [20, 300],
} as const satisfies Readonly<Record<string, Span>>;

/** A numeric field of a batch or kitchen document, as a pattern of its path. */
export type LimitedField = keyof typeof BATCH_LIMITS;

/** What is counted and cannot be broken. */
export const WHOLE_NUMBER_FIELDS = [
  'mould/cavities',
  'mould/moulds',
  'pieces/count',
] as const satisfies readonly LimitedField[];

/** One place of a document. */
export type Place = { readonly path: string; readonly value: unknown };

/**
 * Every number of a document that cannot be meant, with a guess where the number is right in
 * another unit.
 *
 * It looks at the numeric fields it knows and at nothing else, so it may be given anything.
 *
 * @param document - A batch or kitchen document, or something that ought to be one.
 * @returns one problem for each such number, with its place; empty where there is none.
 * @example
 * checkNumbers({ cook: { toSeaLevelC: 300 } })[0]?.code // 'perhaps-fahrenheit'
 */
export function checkNumbers(document: unknown): readonly Problem[] {
  return (Object.keys(BATCH_LIMITS) as LimitedField[]).flatMap((field) =>
    placesOf(document, field).flatMap(({ path, value }) => problemWith(field, path, value)),
  );
}

/** Every place of a document that fits the pattern and holds something. */
export function placesOf(document: unknown, pattern: string): readonly Place[] {
  const keys = pattern.split('/');
  const places: Place[] = [];
  const walk = (value: unknown, step: number, trail: readonly string[]): void => {
    const key = keys[step];
    if (value === undefined) return;
    if (key === undefined) {
      places.push({ path: trail.reduce<string>(pathTo, ''), value });
    } else if (typeof value === 'object' && value !== null) {
      const held = value as Readonly<Record<string, unknown>>;
      const next = key === '*' ? Object.keys(held) : Object.hasOwn(held, key) ? [key] : [];
      for (const one of next) walk(held[one], step + 1, [...trail, one]);
    }
  };
  walk(document, 0, []);
  return places;
}

/** The JSON Pointer one step further. */
export function pathTo(path: string, key: string | number): string {
  return `${path}/${String(key).replaceAll('~', '~0').replaceAll('/', '~1')}`;
}

/** What is shown of a value that is not understood: itself if it is small, else its kind. */
export function shortened(value: unknown): unknown {
  if (Array.isArray(value)) return [];
  if (typeof value === 'object' && value !== null) return {};
  if (typeof value === 'string' && value.length > 60) return `${value.slice(0, 59)}…`;
  return ['function', 'symbol', 'bigint'].includes(typeof value) ? typeof value : value;
}

function problemWith(field: LimitedField, path: string, value: unknown): readonly Problem[] {
  const limits: Span = BATCH_LIMITS[field];
  if (typeof value !== 'number' || !Number.isFinite(value)) {
    return [{ code: 'not-a-number', path, received: shortened(value), limits }];
  }
  const [low, high] = limits;
  const isPossible = (x: number): boolean => x >= low && x <= high;
  const found = { path, received: value, limits };
  if (isPossible(value)) {
    const isCounted = (WHOLE_NUMBER_FIELDS as readonly string[]).includes(field);
    if (!isCounted || Number.isInteger(value)) return [];
    const numbers = { wholeBelow: Math.floor(value), wholeAbove: Math.ceil(value) };
    return [{ code: 'not-whole', ...found, numbers }];
  }
  const asFraction = value / 100;
  if (high <= 1 && value >= 1 && isPossible(asFraction)) {
    return [{ code: 'perhaps-a-percentage', ...found, numbers: { asFraction } }];
  }
  const asCelsiusC = (value - 32) / 1.8;
  if (field.endsWith('C') && value > high && isPossible(asCelsiusC)) {
    return [{ code: 'perhaps-fahrenheit', ...found, numbers: { asCelsiusC } }];
  }
  return [{ code: 'outside-range', ...found }];
}
