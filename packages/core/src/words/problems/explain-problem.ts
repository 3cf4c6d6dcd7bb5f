import type { RangeErrorCode } from '../../foundation/validity/model-range-error.js';
import type { Problem, ProblemCode } from '../../job/batch/problems.js';
import { type RemedyLabel, remedyLabel } from '../advice/explain-advice.js';
import { placeOf } from '../names/places.js';
import { capitalised, fill, listed } from '../text/fill.js';
import { spelled } from '../text/region.js';
import type { DisplayOptions } from '../types.js';
import { formatByKey } from '../units/by-key.js';
import { formatNumber } from '../units/number.js';
import { PROBLEM_WORDS, RANGE_ERROR_WORDS } from './problem-words.js';

/** One problem, ready to read. */
export type ExplainedProblem = {
  /** Stable code. */
  readonly code: ProblemCode;
  /** Where, in words: `line 2 of the formula`. */
  readonly place: string;
  /** Where and what to change, in one go. */
  readonly text: string;
  /** The label of each remedy's button. */
  readonly remedies: readonly RemedyLabel[];
};

/**
 * What to change so that a batch can be planned.
 *
 * @param problem - From `readBatch` or a refusal of `planBatch`.
 * @param options - Units, region and locale. What stands in the document is shown as it is written.
 * @returns the place in words, the text, and the labels of the remedies.
 * @example
 * explainProblem({ code: 'only-water', path: '/formula/1' }).place // 'line 2 of the formula'
 */
export function explainProblem(problem: Problem, options: DisplayOptions = {}): ExplainedProblem {
  const { key, ...spoken } = placeOf(problem.path);
  const place = spelled(spoken.place, options);
  const field = spelled(spoken.field, options);
  const names = { ...namesOf(problem, key, options), place, field, key };
  const text =
    fill(
      `${PROBLEM_WORDS[problem.code]} | Look again at {field}.`,
      { numbers: problem.numbers, names },
      options,
    ) ?? '';
  return {
    code: problem.code,
    place,
    // A sentence that names its place already does not need it in front.
    text:
      problem.path === '' || text.toLowerCase().includes(place.toLowerCase())
        ? text
        : `${capitalised(place)}: ${text}`,
    remedies: (problem.remedies ?? []).map((remedy) => ({
      code: remedy.code,
      label: remedyLabel(remedy, options),
    })),
  };
}

/**
 * What to change when a function of the library throws.
 *
 * @param code - `error.code` of a `ModelRangeError`.
 * @example
 * explainError('not-allowed-together') // 'These cannot be given together. Leave one out.'
 */
export function explainError(code: RangeErrorCode): string {
  return RANGE_ERROR_WORDS[code];
}

function namesOf(problem: Problem, key: string, options: DisplayOptions): Record<string, string> {
  const { received, limits, known = [], also, code, numbers } = problem;
  const names: Record<string, string> = {};
  const shown = asWritten(received);
  if (shown !== undefined) names.received = shown;
  if (typeof received === 'number') {
    names.asFraction = formatNumber(received / 100, 4);
    names.asCelsius = formatNumber((received - 32) / 1.8, 1);
  }
  const words = known.map((name) => TYPE_WORDS[name as keyof typeof TYPE_WORDS] ?? `‘${name}’`);
  if (words.length > 0) {
    names.known = names.anyKnown = listed(words, 'or');
    names.allKnown = listed(words);
  }
  if (also !== undefined) names.also = spelled(placeOf(also).place, options);
  if (limits !== undefined) {
    names.low = limit(key, limits[0], options);
    names.high = limit(key, limits[1], options);
  }
  if (typeof received === 'number' && code === 'shares-do-not-sum')
    names.sum = formatNumber(received, 4);
  for (const name of ['wholeBelow', 'wholeAbove', 'line', 'column']) {
    const number = numbers?.[name];
    if (number !== undefined) names[name] = formatNumber(number, 0, options);
  }
  return names;
}

/** Kinds of JSON values in words. */
const TYPE_WORDS = {
  object: 'a group in braces',
  array: 'a list in brackets',
  string: 'text in quotes',
  number: 'a number',
  boolean: 'true or false',
} as const;

/** A limit of a fraction stays a fraction: that is how the document writes it. */
function limit(key: string, value: number, options: DisplayOptions): string {
  return /(Fraction|[Ss]hare|shareOf\w+|Humidity|profile|dp\w+)$/.test(key)
    ? formatNumber(value, 4)
    : formatByKey(key, value, options);
}

/** What stands in the document, short and as it is written. */
function asWritten(received: unknown): string | undefined {
  if (received === undefined) return undefined;
  if (typeof received === 'number') return String(received);
  if (typeof received === 'object' && received !== null)
    return Array.isArray(received) ? 'a list' : 'a group in braces';
  const written =
    typeof received === 'string' ? `‘${received}’` : (JSON.stringify(received) ?? typeof received);
  return written.length > 60 ? `${written.slice(0, 57)}…` : written;
}
