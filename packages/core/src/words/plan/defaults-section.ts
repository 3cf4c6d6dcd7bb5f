import type { PlanDocument, TakenDefault } from '../../job/plan/types.js';
import { gradeWord } from '../names/grades.js';
import { placeOf } from '../names/places.js';
import { capitalised, listed } from '../text/fill.js';
import type { DisplayOptions } from '../types.js';
import { formatByKey } from '../units/by-key.js';
import { formatNumber } from '../units/number.js';

/**
 * What the plan took for granted.
 *
 * Lines of the formula that share a default share a line, and what nobody gave is told in one go: a
 * list that is read beats one that is long.
 */
export function defaultLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const groups: { readonly what: string; readonly numbers: string[] }[] = [];
  const notGiven: string[] = [];
  for (const taken of plan.defaults) {
    const number = /^\/formula\/(\d+)\//.exec(taken.path)?.[1];
    if (taken.value === 'unknown') {
      notGiven.push(headOf(taken.path, true));
      continue;
    }
    const what = `${headOf(taken.path, number === undefined)}: ${valueText(taken, options)} (${gradeWord(taken.grade)}).`;
    const numbers = number === undefined ? [] : [String(Number(number) + 1)];
    const known = groups.find((group) => group.what === what && numbers.length > 0);
    if (known === undefined) groups.push({ what, numbers });
    else known.numbers.push(...numbers);
  }
  return [
    ...groups.map(({ what, numbers }) =>
      numbers.length === 0
        ? capitalised(what)
        : `Line${numbers.length === 1 ? '' : 's'} ${listed(numbers)} of the formula, ${what}`,
    ),
    ...(notGiven.length === 0
      ? []
      : [`Not given, so nothing is made of it: ${notGiven.join('; ')}.`]),
  ];
}

/** `the pan, the capacity`, or the field alone where the place is said elsewhere. */
function headOf(path: string, withPlace: boolean): string {
  const { place, field } = placeOf(path);
  return !withPlace || field === place ? field : `${place}, ${field}`;
}

function valueText({ path, value, low, high }: TakenDefault, options: DisplayOptions): string {
  const { key } = placeOf(path);
  if (value === 'film-of-the-pan' && low !== undefined && high !== undefined) {
    return `the film on the pan, ${formatNumber(low, 0, options)} to ${formatNumber(high, 0, options)} g for each litre it holds`;
  }
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'string') return value.replaceAll('-', ' ');
  const shown = (number: number) => formatByKey(key, number, options);
  return low === undefined || high === undefined || low === high
    ? shown(value)
    : `${shown(value)}, from ${shown(low)} to ${shown(high)}`;
}
