import type { Grade } from 'vitrose';
import type { SourceId } from 'vitrose/sources';

/** One constant as a page shows it. */
export type ConstantRow = {
  readonly name: string;
  readonly value: string;
  readonly source: SourceId;
  readonly grade: Grade;
  /** Where in the source, what else is in print, what a reader would trip over. */
  readonly note: string;
};

type Pedigree = { readonly source: SourceId; readonly grade: Grade; readonly locator?: string };
type Named = Readonly<Record<string, unknown>>;

/** Fields of a cited value that are not constants of their own. */
const ABOUT = ['source', 'grade', 'locator', 'note', 'low', 'high', 'polyols', 'longChains'];

/**
 * Every constant of a module with its source and grade, whatever shape the module keeps them in:
 * each with its own, or a whole page of them under one.
 *
 * A number that no source stands over is an error: the page would hide it otherwise.
 */
export function constantRows(
  constants: Named,
  over?: Pedigree,
  prefix = '',
): readonly ConstantRow[] {
  const own = pedigreeOf(constants) ?? over;
  if ('value' in constants) return [rowOf(prefix, constants, own)];
  return Object.entries(constants).flatMap(([key, value]) => {
    if (ABOUT.includes(key)) return [];
    const name = key === 'rows' || key === 'points' ? prefix : joined(prefix, key);
    if (isNamed(value)) return constantRows(value, own, name);
    return [rowOf(name, { value }, own)];
  });
}

function rowOf(name: string, entry: Named, own: Pedigree | undefined): ConstantRow {
  if (own === undefined) throw new Error(`${name} has no source.`);
  return {
    name,
    value: written(entry.value),
    source: own.source,
    grade: own.grade,
    note: noteOf(entry, own),
  };
}

function noteOf(entry: Named, own: Pedigree): string {
  const { low, high, note, bandK } = entry;
  const parts = [
    own.locator,
    low !== undefined && high !== undefined
      ? `from ${written(low)} to ${written(high)}`
      : undefined,
    bandK === undefined ? undefined : `±${written(bandK)} K`,
    note,
  ];
  return parts.filter((part) => part !== undefined).join('; ');
}

function pedigreeOf(entry: Named): Pedigree | undefined {
  return 'source' in entry && 'grade' in entry ? (entry as unknown as Pedigree) : undefined;
}

function isNamed(value: unknown): value is Named {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}

/** A number in its own digits, a list of them, or pairs of a table. */
function written(value: unknown): string {
  if (Array.isArray(value)) {
    const pairs = value.some(Array.isArray);
    return value
      .map((part) => (pairs ? (part as unknown[]).map(written).join(' → ') : written(part)))
      .join(pairs ? '; ' : ', ');
  }
  if (typeof value === 'number') return String(value).replace('-', '−');
  return String(value);
}

function joined(prefix: string, key: string): string {
  // A key with a space in it was written for readers already.
  const words = key.includes(' ') ? key : spoken(key);
  return prefix === '' ? words : `${prefix}, ${words}`;
}

/** Units as they end a name, longest first. */
const UNITS: readonly (readonly [ending: string, unit: string])[] = [
  ['JPerMolK', 'J/(mol·K)'],
  ['KgPerMol', 'kg/mol'],
  ['GPerMol', 'g/mol'],
  ['KJPerKg', 'kJ/kg'],
  ['MPerS2', 'm/s²'],
  ['KPerM', 'K/m'],
  ['MassFraction', 'mass fraction'],
  ['TemperatureK', 'temperature, K'],
  ['Pa', 'Pa'],
  ['Ml', 'mL'],
  ['Min', 'min'],
  ['C', '°C'],
  ['K', 'K'],
  ['G', 'g'],
  ['M', 'm'],
  ['S', 's'],
];

/** `lapseRateKPerM` becomes `lapse rate, K/m`. */
export function spoken(key: string): string {
  const unit = UNITS.find(
    ([ending]) => key.endsWith(ending) && /[a-z0-9]$/.test(key.slice(0, -ending.length)),
  );
  const stem = unit === undefined ? key : key.slice(0, -unit[0].length);
  const words = stem
    .replace(/([a-z0-9])([A-Z])/g, '$1 $2')
    .replaceAll('-', ' ')
    .toLowerCase();
  return unit === undefined ? words : `${words}, ${unit[1]}`;
}
