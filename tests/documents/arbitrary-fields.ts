import fc from 'fast-check';
import {
  type Air,
  BATCH_LIMITS,
  type Hob,
  type Kitchen,
  type Mould,
  type OwnIngredient,
  type Pan,
  type Profile,
  type Thermometer,
} from 'vitrose';

type LimitedField = keyof typeof BATCH_LIMITS;

/** Three digits, as a cook would write it, and never rounded out of the limits. */
const written = (value: number, low: number, high: number): number =>
  Math.min(high, Math.max(low, Number(value.toPrecision(3))));

/** A number between two others, written with three digits. */
export const between = (low: number, high: number): fc.Arbitrary<number> =>
  fc.double({ min: low, max: high, noNaN: true }).map((value) => written(value, low, high) + 0);

/** Any number a field can hold, its two ends more often than chance would have it. */
export const within = (field: LimitedField): fc.Arbitrary<number> => {
  const [low, high] = BATCH_LIMITS[field];
  return fc.oneof({ weight: 8, arbitrary: between(low, high) }, fc.constantFrom(low, high));
};

/** Any count a field can hold. */
export const countWithin = (field: LimitedField): fc.Arbitrary<number> => {
  const [min, max] = BATCH_LIMITS[field];
  return fc.integer({ min, max });
};

/** A group of fields of which the named ones are always there, and any of the others may be. */
export const group = <T extends object, K extends keyof T = never>(
  fields: { [P in keyof T]: fc.Arbitrary<T[P]> },
  required: readonly K[] = [],
): fc.Arbitrary<Partial<T> & Pick<T, K>> =>
  fc.record(fields, {
    requiredKeys: [...required],
    noNullPrototype: true,
  }) as unknown as fc.Arbitrary<Partial<T> & Pick<T, K>>;

/** Shares that sum to 1, written as exactly as a number can be. */
export const shares = (parts: number): fc.Arbitrary<readonly number[]> =>
  fc
    .array(fc.integer({ min: 0, max: 20 }), { minLength: parts, maxLength: parts })
    .filter((weights) => weights.some((weight) => weight > 0))
    .map((weights) => {
      const total = weights.reduce((sum, weight) => sum + weight, 0);
      return weights.map((weight) => weight / total);
    });

export const profile: fc.Arbitrary<Profile> = shares(4).map(
  ([dp1 = 0, dp2 = 0, dp3 = 0, dp4plus = 0]) => ({ dp1, dp2, dp3, dp4plus }),
);

export const kitchen: fc.Arbitrary<Kitchen> = fc.oneof(
  group({ elevationM: within('kitchen/elevationM') }, ['elevationM']),
  group({ pressurePa: within('kitchen/pressurePa') }, ['pressurePa']),
  group(
    {
      seaLevelPressurePa: within('kitchen/seaLevelPressurePa'),
      elevationM: within('kitchen/elevationM'),
    },
    ['seaLevelPressurePa', 'elevationM'],
  ),
  group({ waterBoilsAtC: within('kitchen/waterBoilsAtC') }, ['waterBoilsAtC']),
);

export const thermometer: fc.Arbitrary<Thermometer> = group({
  kind: fc.constantFrom('probe', 'thermocouple', 'dial', 'liquid-in-glass', 'infrared'),
  boilingWaterReadingC: within('thermometer/boilingWaterReadingC'),
  iceWaterReadingC: within('thermometer/iceWaterReadingC'),
  maxC: within('thermometer/maxC'),
  readsInS: within('thermometer/readsInS'),
});

export const hob: fc.Arbitrary<Hob> = fc.oneof(
  group({ kind: fc.constantFrom('gas', 'resistance', 'induction'), powerW: within('hob/powerW') }, [
    'kind',
    'powerW',
  ]),
  group(
    {
      kind: fc.constant('timed' as const),
      waterG: within('hob/waterG'),
      fromC: within('hob/fromC'),
      boilsInMin: within('hob/boilsInMin'),
    },
    ['kind', 'waterG', 'fromC', 'boilsInMin'],
  ),
);

export const pan: fc.Arbitrary<Pan> = group({
  diameterMm: within('pan/diameterMm'),
  capacityMl: within('pan/capacityMl'),
  emptyMassG: within('pan/emptyMassG'),
});

export const room: fc.Arbitrary<Air> = group({
  temperatureC: within('room/temperatureC'),
  relativeHumidity: within('room/relativeHumidity'),
});

export const mould: fc.Arbitrary<Mould> = group({
  kind: fc.constantFrom(
    'silicone',
    'metal',
    'polycarbonate',
    'plastic',
    'starch',
    'sugar-bed',
    'slab',
  ),
  cavityMl: within('mould/cavityMl'),
  cavities: countWithin('mould/cavities'),
  moulds: countWithin('mould/moulds'),
  maxC: within('mould/maxC'),
});

const species = ['sucrose', 'glucose', 'fructose', 'isomalt', 'xylitol', 'citric-acid'] as const;

export const ownIngredient: fc.Arbitrary<OwnIngredient> = fc.oneof(
  fc.tuple(shares(species.length), between(0.5, 1)).map(([parts, drySolidsMassFraction]) => ({
    kind: 'food' as const,
    name: 'Invented by the bench',
    drySolidsMassFraction,
    solids: Object.fromEntries(species.map((id, at) => [id, parts[at] ?? 0])),
  })),
  group(
    {
      kind: fc.constant('starch-syrup' as const),
      drySolidsMassFraction: between(0.6, 0.98),
      dextroseEquivalent: within('ingredients/*/dextroseEquivalent'),
      conversion: fc.constantFrom('acid', 'enzyme', 'high-maltose'),
      maxAdditionC: within('ingredients/*/maxAdditionC'),
    },
    ['kind', 'drySolidsMassFraction', 'dextroseEquivalent'],
  ),
  between(0.3, 1).map((oil) => ({
    kind: 'flavour' as const,
    drySolidsMassFraction: 1,
    apart: { oil, ethanol: 1 - oil },
  })),
);
