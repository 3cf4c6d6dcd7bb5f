import type { None } from './types.js';

/**
 * Tells "there is no answer" from an answer.
 *
 * @param result - What a function returned that may answer `none`.
 * @returns true when there is no answer; `reason` then says why.
 * @example
 * isNone({ kind: 'none', reason: 'below-the-boil' }) // true
 */
export function isNone<T extends object, Reason extends string>(
  result: T | None<Reason>,
): result is None<Reason> {
  return 'kind' in result && result.kind === 'none';
}
