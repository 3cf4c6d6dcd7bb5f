import { checkNumbers, shortened } from '../../job/batch/limits.js';
import type { Problem } from '../../job/batch/problems.js';
import { DOCUMENT_CAPS } from '../caps.js';
import type { Shape } from '../shape/types.js';
import { parseText } from '../text/parse-text.js';
import { formatProblem } from './format-problem.js';
import { plainCopy } from './plain-copy.js';
import { structureProblems } from './structure-problems.js';

/** What is read, and how. */
export type DocumentKind = {
  /** `vitrose.batch/1`. */
  readonly format: string;
  readonly shape: Shape;
  /** What is wrong with names; it is said instead of what the shape would say in that place. */
  readonly nameProblems: (value: unknown) => readonly Problem[];
};

/** Plain data of that shape, or everything that stands in the way of it. */
export type Reading =
  | { readonly document: unknown; readonly problems?: undefined }
  | { readonly document?: undefined; readonly problems: readonly Problem[] };

/** Reads a document of one kind from a JSON text or from a value that came from anywhere. */
export function readDocument(input: unknown, kind: DocumentKind): Reading {
  const parsed = typeof input === 'string' ? parseText(input) : { value: input };
  if (parsed.problem !== undefined) return { problems: [parsed.problem] };
  const plain = plainCopy(parsed.value);
  if (plain.problems.length > 0) return { problems: plain.problems };
  const problems = allProblems(plain.value, kind);
  return problems.length > 0 ? { problems } : { document: plain.value };
}

function allProblems(value: unknown, kind: DocumentKind): readonly Problem[] {
  if (typeof value !== 'object' || value === null || Array.isArray(value)) {
    return [{ code: 'wrong-type', path: '', received: shortened(value), known: ['object'] }];
  }
  const { format, formula } = value as { readonly format?: unknown; readonly formula?: unknown };
  const wrongFormat = formatProblem(format, kind.format);
  const first = wrongFormat === undefined ? [] : [wrongFormat];
  // What a later version means by its fields is not known here.
  if (wrongFormat?.code === 'newer-format') return first;
  if (Array.isArray(formula) && formula.length > DOCUMENT_CAPS.lines) {
    return [...first, tooManyLines(formula.length)];
  }
  const spoken = [...first, ...kind.nameProblems(value)];
  const places = spoken.map(({ path }) => path);
  const structure = structureProblems([kind.shape], value, '');
  return [
    ...spoken,
    ...structure.filter(({ path }) => !places.includes(path)),
    ...checkNumbers(value),
  ];
}

function tooManyLines(received: number): Problem {
  return { code: 'too-many-lines', path: '/formula', received, limits: [0, DOCUMENT_CAPS.lines] };
}
