import { shortened } from '../../job/batch/limits.js';
import type { Problem } from '../../job/batch/problems.js';

/** What is wrong with the format a document names: none, another, or one that is to come. */
export function formatProblem(received: unknown, wanted: string): Problem | undefined {
  if (received === wanted) return undefined;
  const code =
    typeof received === 'string' && isLater(received, wanted) ? 'newer-format' : 'wrong-format';
  return { code, path: '/format', received: shortened(received), known: [wanted] };
}

/** The same document with a higher number. */
function isLater(received: string, wanted: string): boolean {
  const [name, number] = wanted.split('/');
  const [otherName, otherNumber = '', ...rest] = received.split('/');
  return (
    name === otherName &&
    rest.length === 0 &&
    /^[1-9]\d*$/.test(otherNumber) &&
    Number(otherNumber) > Number(number)
  );
}
