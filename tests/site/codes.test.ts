import { describe, expect, it } from 'vitest';
import {
  type AdviceCode,
  type ProblemCode,
  planBatch,
  type RangeErrorCode,
  type WarningCode,
} from 'vitrose';
import { explainProblem } from 'vitrose/words';
import { ADVICE_EXAMPLES } from '../../site/src/codes/advice-examples.js';
import { ERROR_EXAMPLES, thrownBy } from '../../site/src/codes/error-examples.js';
import { findProblem } from '../../site/src/codes/find-problem.js';
import { PROBLEM_EXAMPLES } from '../../site/src/codes/problem-examples.js';
import { WARNING_EXAMPLES } from '../../site/src/codes/warning-examples.js';

describe('the example a page shows', () => {
  it.each(Object.keys(ADVICE_EXAMPLES) as AdviceCode[])('raises the advice %s', (code) => {
    const result = planBatch(ADVICE_EXAMPLES[code].batch);
    expect(
      result.kind === 'plan' ? result.plan.advice.map((one) => one.code) : result.problems,
    ).toContain(code);
  });

  const shown = (Object.keys(PROBLEM_EXAMPLES) as ProblemCode[]).filter(
    (code) => PROBLEM_EXAMPLES[code] !== undefined,
  );

  it('is missing for one problem only', () => {
    expect(Object.keys(PROBLEM_EXAMPLES).length - shown.length).toBe(1);
  });

  it.each(shown)('has the problem %s', (code) => {
    const problem = findProblem(code, PROBLEM_EXAMPLES[code]);
    expect(problem?.code).toBe(code);
    if (problem !== undefined) expect(explainProblem(problem).text).not.toMatch(/Look again at/);
  });

  it.each(Object.keys(WARNING_EXAMPLES) as WarningCode[])('warns with %s', (code) => {
    expect(WARNING_EXAMPLES[code].warnings().map((warning) => warning.code)).toContain(code);
  });

  it.each(Object.keys(ERROR_EXAMPLES) as RangeErrorCode[])(
    'throws %s, and the error knows its page',
    (code) => {
      const error = thrownBy(ERROR_EXAMPLES[code]);
      expect(error.code).toBe(code);
      expect(error.docs).toBe(`errors/${code}`);
    },
  );
});
