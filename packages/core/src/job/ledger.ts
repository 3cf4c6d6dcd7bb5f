import type { ModelWarning } from '../foundation/results/types.js';
import type { Grade } from '../foundation/validity/constants.js';
import type { Problem } from './batch/problems.js';
import type { TakenDefault } from './plan/types.js';

/** What a plan writes down on its way: problems, warnings and every default where it is applied. */
export type Ledger = {
  readonly problems: Problem[];
  readonly warnings: ModelWarning[];
  readonly defaults: TakenDefault[];
};

/** What stands in when the document says nothing. */
export type Fallback<T> = {
  readonly value: T;
  readonly grade: Grade;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
};

/** An empty ledger. */
export function newLedger(): Ledger {
  return { problems: [], warnings: [], defaults: [] };
}

/** The given value, or the fallback, written down where it is applied. */
export function take<T extends number | string | boolean>(
  ledger: Ledger,
  path: string,
  given: T | undefined,
  fallback: Fallback<T>,
): T {
  if (given !== undefined) return given;
  const { value, low, high, grade } = fallback;
  ledger.defaults.push({ path, value, low, high, grade });
  return value;
}

/** Writes down what stands in for a field of the document. */
export function assume(
  ledger: Ledger,
  path: string,
  value: TakenDefault['value'],
  grade: Grade = 'assumed',
): void {
  ledger.defaults.push({ path, value, grade });
}

/** Writes down that the document says nothing and the plan goes without. */
export function leaveOut(ledger: Ledger, path: string, given: unknown): void {
  if (given === undefined) assume(ledger, path, 'unknown');
}

/** Writes down what stands in the way; nothing comes of the question. */
export function refuse(ledger: Ledger, problem: Problem): undefined {
  ledger.problems.push(problem);
}

/** Adds warnings that are not there yet. */
export function warn(ledger: Ledger, warnings: readonly ModelWarning[]): void {
  for (const warning of warnings) {
    const known = ledger.warnings.some(
      (other) =>
        other.code === warning.code &&
        other.parameter === warning.parameter &&
        other.subject === warning.subject,
    );
    if (!known) ledger.warnings.push(warning);
  }
}
