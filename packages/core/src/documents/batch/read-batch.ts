import type { Problem } from '../../job/batch/problems.js';
import { SHOP_NAMES, type ShopNames } from '../../job/batch/shop-names.js';
import type { BatchDocument } from '../../job/batch/types.js';
import { ingredientNameProblems } from '../names/ingredient-names.js';
import { measureUnitProblems } from '../names/measure-units.js';
import { readDocument } from '../reading/read-document.js';
import { batchShape } from '../shape/batch.js';

/** A batch that was understood, or everything that stands in the way of one. */
export type BatchReading =
  | { readonly kind: 'batch'; readonly batch: BatchDocument }
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] };

/** What helps to understand a batch. */
export type ReadBatchOptions = {
  /** What ingredients are called in shops, in place of the library's own short list. */
  readonly shopNames?: ShopNames | undefined;
};

/**
 * Reads a batch that came from a file, a link, a form or another program.
 *
 * Everything that is wrong is told at once, each thing with its place and, where one can be
 * guessed, the name or number that was meant. Nothing is corrected in silence. Whether the batch
 * can be cooked is another question: `planBatch` answers it.
 *
 * Text may have 256 kB; twelve levels and 200 lines are read.
 *
 * @param input - A JSON text, or an already parsed value of any kind.
 * @param options - `shopNames` to guess an ingredient by, lower case with hyphens.
 * @returns `{ kind: 'batch', batch }`, or `{ kind: 'problems', problems }` with at least one. It
 * never throws.
 * @example
 * const reading = readBatch('{ "format": "vitrose.batch/1", "formula": [], "cok": { "toSeaLevelC": 148 } }');
 * reading.kind === 'problems' && reading.problems[0]?.known // ['cook']
 */
export function readBatch(input: unknown, options: ReadBatchOptions = {}): BatchReading {
  const { shopNames = SHOP_NAMES } = options;
  const { document, problems } = readDocument(input, {
    format: 'vitrose.batch/1',
    shape: batchShape,
    nameProblems: (value) => [
      ...ingredientNameProblems(value, shopNames),
      ...measureUnitProblems(value),
    ],
  });
  if (problems !== undefined) return { kind: 'problems', problems };
  // A test holds the shape against the type, field by field.
  return { kind: 'batch', batch: document as BatchDocument };
}
