import { type Problem, type ProblemCode, planBatch } from 'vitrose';
import { readBatch } from 'vitrose/documents';

/** The problem of this code a document has, whether it is found in reading or in planning. */
export function findProblem(code: ProblemCode, document: unknown): Problem | undefined {
  const reading = readBatch(document);
  if (reading.kind === 'problems') return reading.problems.find((problem) => problem.code === code);
  const result = planBatch(reading.batch);
  return result.kind === 'refused'
    ? result.problems.find((problem) => problem.code === code)
    : undefined;
}
