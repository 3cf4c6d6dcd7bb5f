import type { BATCH_LIMITS } from 'vitrose';
import type { QuantityId } from './read/units.js';

/** A number field of the page: which place of the document it holds and how it is read. */
export type NumberField = {
  readonly path: string;
  readonly limit: keyof typeof BATCH_LIMITS;
  readonly quantity: QuantityId;
  readonly whole?: boolean | undefined;
  /** Steps of the arrow keys, in the reader's unit. */
  readonly step?: number | undefined;
  /** May be left empty. */
  readonly optional?: boolean | undefined;
};

const field = (
  path: string,
  limit: NumberField['limit'],
  quantity: QuantityId,
  more: Partial<NumberField> = {},
): NumberField => ({ path, limit, quantity, optional: true, ...more });

/** Every number field but the amounts. */
export const FIELDS = {
  printed: field('/cook/toSeaLevelC', 'cook/toSeaLevelC', 'temperature', { optional: false }),
  moisture: field('/cook/toMoistureMassFraction', 'cook/toMoistureMassFraction', 'percent', {
    optional: false,
    step: 0.1,
  }),
  glass: field('/cook/toGlassTransitionC', 'cook/toGlassTransitionC', 'temperature', {
    optional: false,
  }),
  boiling: field(
    '/thermometer/boilingWaterReadingC',
    'thermometer/boilingWaterReadingC',
    'temperature',
    { step: 0.1 },
  ),
  ice: field('/thermometer/iceWaterReadingC', 'thermometer/iceWaterReadingC', 'temperature', {
    step: 0.1,
  }),
  scaleEnd: field('/thermometer/maxC', 'thermometer/maxC', 'temperature'),
  altitude: field('/kitchen/elevationM', 'kitchen/elevationM', 'elevation', { step: 100 }),
  weather: field('/kitchen/seaLevelPressurePa', 'kitchen/seaLevelPressurePa', 'pressure'),
  barometer: field('/kitchen/pressurePa', 'kitchen/pressurePa', 'pressure'),
  trusted: field('/kitchen/waterBoilsAtC', 'kitchen/waterBoilsAtC', 'temperature', { step: 0.1 }),
  readsIn: field('/thermometer/readsInS', 'thermometer/readsInS', 'seconds'),
  power: field('/hob/powerW', 'hob/powerW', 'power', { step: 100, optional: false }),
  kettle: field('/hob/boilsInMin', 'hob/boilsInMin', 'minutes', {
    step: 0.5,
    optional: false,
  }),
  diameter: field('/pan/diameterMm', 'pan/diameterMm', 'length'),
  capacity: field('/pan/capacityMl', 'pan/capacityMl', 'volume', { step: 100 }),
  empty: field('/pan/emptyMassG', 'pan/emptyMassG', 'mass', { step: 10 }),
  cavity: field('/mould/cavityMl', 'mould/cavityMl', 'volume', { step: 0.5 }),
  cavities: field('/mould/cavities', 'mould/cavities', 'count', { whole: true }),
  moulds: field('/mould/moulds', 'mould/moulds', 'count', { whole: true }),
  mouldMax: field('/mould/maxC', 'mould/maxC', 'temperature', { step: 10 }),
  roomC: field('/room/temperatureC', 'room/temperatureC', 'temperature'),
  humidity: field('/room/relativeHumidity', 'room/relativeHumidity', 'percent'),
  storeHumidity: field('/store/relativeHumidity', 'store/relativeHumidity', 'percent'),
  wrapArea: field('/wrap/areaCm2', 'wrap/areaCm2', 'area', { step: 5, optional: false }),
  seal: field('/wrap/sealFactor', 'wrap/sealFactor', 'plain', { step: 0.1 }),
  alkalinity: field('/water/alkalinityMmolPerL', 'water/alkalinityMmolPerL', 'alkalinity', {
    step: 0.5,
  }),
  vacuum: field('/cook/underVacuumPa', 'cook/underVacuumPa', 'pressure', { step: 10 }),
  storeC: field('/store/temperatureC', 'store/temperatureC', 'temperature'),
  days: field('/store/forDays', 'store/forDays', 'days', { step: 10 }),
  count: field('/pieces/count', 'pieces/count', 'count', { whole: true }),
  pieceMass: field('/pieces/massG', 'pieces/massG', 'mass', { step: 0.5 }),
  finished: field('/pieces/finishedMassG', 'pieces/finishedMassG', 'mass', { step: 10 }),
} as const satisfies Readonly<Record<string, NumberField>>;

/** The name of a field, which is also the end of its id on the page. */
export type FieldName = keyof typeof FIELDS;
