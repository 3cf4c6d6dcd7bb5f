import type { PlanDocument, TakenDefault } from '../../job/plan/types.js';
import { gradeWord } from '../names/grades.js';
import { ingredientName } from '../names/ingredients.js';
import { placeOf } from '../names/places.js';
import { NOT_GIVEN_WORDS, TAKEN_WORDS } from '../names/taken-words.js';
import { capitalised, fill, listed } from '../text/fill.js';
import { spelled } from '../text/region.js';
import type { DisplayOptions } from '../types.js';
import { formatFraction } from '../units/amounts.js';
import { formatByKey } from '../units/by-key.js';
import { formatNumber } from '../units/number.js';

/** What is taken for several ingredients at once. */
type Group = { readonly taken: TakenDefault; readonly pattern: string; readonly names: string[] };

/**
 * What the plan took for granted.
 *
 * Ingredients that share a default share a line, and what nobody gave is told in one go, place by
 * place: a list that is read beats one that is long.
 */
export function defaultLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const groups: Group[] = [];
  const notGiven = new Map<string, string[]>();
  for (const taken of plan.defaults) {
    const name = ingredientAt(plan, taken.path, options);
    if (taken.value === 'unknown') {
      const { place, field, key } = placeOf(taken.path);
      const where = name ?? spelled(place, options);
      const fields = notGiven.get(where) ?? [];
      const called = Object.hasOwn(NOT_GIVEN_WORDS, key)
        ? NOT_GIVEN_WORDS[key as keyof typeof NOT_GIVEN_WORDS]
        : field.replace(/^the /, '');
      const bare = spelled(called, options);
      notGiven.set(where, field === place ? fields : [...fields, bare]);
      continue;
    }
    const pattern = taken.path.slice(1).replace(/^formula\/\d+/, 'formula/*');
    const known = groups.find((group) => group.pattern === pattern && isSame(group.taken, taken));
    if (known === undefined)
      groups.push({ taken, pattern, names: name === undefined ? [] : [name] });
    else if (name !== undefined && !known.names.includes(name)) known.names.push(name);
  }
  const places = [...notGiven].map(([place, fields]) =>
    fields.length === 0 ? place : `${place} (${fields.join(', ')})`,
  );
  return [
    ...groups.map((group) => `${groupText(group, options)} (${gradeWord(group.taken.grade)}).`),
    ...(places.length === 0 ? [] : [`Not given, so nothing is made of it: ${places.join('; ')}.`]),
  ];
}

/** The name of the ingredient a path is about, if it is a line of the formula. */
function ingredientAt(
  { formula }: PlanDocument,
  path: string,
  options: DisplayOptions,
): string | undefined {
  const line = /^\/formula\/\d+(?=\/)/.exec(path)?.[0];
  const ingredient = formula.find((planned) => planned.path === line)?.ingredient;
  return ingredient === undefined ? undefined : ingredientName(ingredient, options);
}

function isSame(a: TakenDefault, b: TakenDefault): boolean {
  return a.value === b.value && a.low === b.low && a.high === b.high && a.grade === b.grade;
}

function groupText({ taken, pattern, names }: Group, options: DisplayOptions): string {
  const { path, value, low, high } = taken;
  const { place, field, key } = placeOf(path);
  const shown = (number: number) => formatByKey(key, number, options);
  const text = typeof value === 'number' ? shown(value) : plainText(value);
  const isRange = low !== undefined && high !== undefined && low !== high;
  const range = isRange ? `${text}, from ${shown(low)} to ${shown(high)}` : text;
  const facts: Record<string, string> = { value: text, range };
  if (names.length > 0) facts.lines = listed(names);
  if (value !== 'no-limit') facts.heat = text;
  if (typeof value === 'number') facts.water = waterText(value, low, high, options);
  if (value === 'film-of-the-pan' && isRange)
    facts.film = `${formatNumber(low, 0, options)} to ${formatNumber(high, 0, options)} g`;
  const known = Object.hasOwn(TAKEN_WORDS, pattern)
    ? fill(TAKEN_WORDS[pattern as keyof typeof TAKEN_WORDS], { names: facts }, options)
    : undefined;
  return known ?? capitalised(`${field === place ? field : `${place}, ${field}`}: ${range}`);
}

function plainText(value: string | boolean): string {
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  return value.replaceAll('-', ' ');
}

/** Water is what a cook sees; the document says the dry part. */
function waterText(
  drySolids: number,
  low: number | undefined,
  high: number | undefined,
  options: DisplayOptions,
): string {
  const water = (dry: number) => (1 - dry < 0.0005 ? 'none' : formatFraction(1 - dry, options));
  if (low === undefined || high === undefined || water(low) === water(high))
    return water(drySolids);
  return water(high) === 'none'
    ? `${water(drySolids)}, up to ${water(low)}`
    : `${water(drySolids)}, from ${water(high)} to ${water(low)}`;
}
