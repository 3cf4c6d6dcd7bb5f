/** Groups of the batch document. */
const GROUPS: readonly string[] = [
  'formula',
  'kitchen',
  'thermometer',
  'hob',
  'pan',
  'room',
  'store',
  'wrap',
  'handling',
  'water',
  'mould',
  'pieces',
  'name',
  'note',
  'format',
];

/** Fields whose own name, taken apart, is not yet a kitchen word. */
const FIELDS = {
  emptyMassG: 'the mass of the empty pan',
  waterG: 'the mass of water',
  fromC: 'the temperature at the start',
  boilsInMin: 'the minutes to the boil',
  relativeHumidity: 'the humidity',
  forDays: 'the keeping time',
  maxC: 'the highest temperature',
  cavityMl: 'the size of a cavity',
  cavities: 'the number of cavities',
  moulds: 'the number of moulds',
  elevationM: 'the altitude',
  pressurePa: 'the air pressure',
  seaLevelPressurePa: 'the sea-level pressure',
  waterBoilsAtC: 'the boiling point of water',
  boilingWaterReadingC: 'the reading in boiling water',
  iceWaterReadingC: 'the reading in ice water',
  readsInS: 'the seconds it takes to settle',
  underVacuumPa: 'the vacuum',
  dextroseEquivalent: 'the dextrose equivalent (DE)',
  lossFraction: 'the loss',
  breakFraction: 'the breakage',
  toSeaLevelC: "the recipe's temperature",
  toMoistureMassFraction: 'the water left',
  toGlassTransitionC: 'how warm it must stay hard',
  toStage: 'the stage',
  shareOfDrySolids: 'the share of the dry solids',
  shareOfFinished: 'the share of the sweet',
  alkalinityMmolPerL: 'the alkalinity',
  stirredAfterBoil: 'stirring after the boil',
  when: 'when it goes in',
  atC: 'the temperature it goes in at',
  count: 'the number of pieces',
  form: 'how it lies in the spoon',
  sealFactor: 'how well it is sealed',
  areaCm2: 'the area of the film',
  makeUpWaterFor: 'the water for a powder',
  pH: 'the pH',
  syrupPH: "the syrup's own pH",
  targetPH: 'the pH wanted',
  waterGPerMl: 'the water in each ml of syrup',
  acidsFromS: 'when the acid joins',
} as const;

/** A place of the document in words. */
export type Place = {
  /** `line 2 of the formula`, `the pan`; `the batch` for the whole. */
  readonly place: string;
  /** `the mass`; the place itself where the path ends in a group. */
  readonly field: string;
  /** The last key of the path, as written. */
  readonly key: string;
};

/**
 * Where a JSON Pointer into the batch document leads, in words.
 *
 * @param path - For example `/formula/1/massG`; empty for the whole.
 */
export function placeOf(path: string): Place {
  const keys = path
    .split('/')
    .slice(1)
    .map((key) => key.replaceAll('~1', '/').replaceAll('~0', '~'));
  const [group = '', second = ''] = keys;
  const key = keys[keys.length - 1] ?? '';
  const place = groupName(group, second);
  const isLine = (group === 'formula' || group === 'ingredients') && keys.length === 2;
  return { place, field: keys.length < 2 || isLine ? place : fieldName(key), key };
}

/** `boilingWaterReadingC` → `the reading in boiling water`; others taken apart, without the unit. */
export function fieldName(key: string): string {
  if (Object.hasOwn(FIELDS, key)) return FIELDS[key as keyof typeof FIELDS];
  const words = key
    .replace(/(MassFraction|Per10K|Pa|Ml|Mm|Kg|Min|Days|[CKGMSW])$/, '')
    .replace(/([a-z0-9])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`);
  return `the ${words === '' ? key : words}`;
}

function groupName(group: string, second: string): string {
  if (group === '') return 'the batch';
  if (group === 'formula' && /^\d+$/.test(second))
    return `line ${Number(second) + 1} of the formula`;
  if (group === 'ingredients' && second !== '') return `your ingredient ‘${second}’`;
  if (group === 'cook') return 'the target';
  if (group === 'ingredients') return 'your own ingredients';
  return GROUPS.includes(group) ? `the ${group}` : `‘${group}’`;
}
