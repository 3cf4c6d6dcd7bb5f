import type { Problem } from '../../job/batch/problems.js';
import { readDocument } from '../reading/read-document.js';
import { kitchenShape } from '../shape/kitchen.js';
import type { KitchenDocument } from './types.js';

/** A kitchen that was understood, or everything that stands in the way of one. */
export type KitchenReading =
  | { readonly kind: 'kitchen'; readonly kitchen: KitchenDocument }
  | { readonly kind: 'problems'; readonly problems: readonly Problem[] };

/**
 * Reads a kitchen on its own, as saved from one batch to be laid into the next.
 *
 * @param input - A JSON text, or an already parsed value of any kind.
 * @returns `{ kind: 'kitchen', kitchen }`, or `{ kind: 'problems', problems }` with at least one.
 * It never throws.
 * @example
 * readKitchen({ format: 'vitrose.kitchen/1', room: { relativeHumidity: 0.55 } }).kind // 'kitchen'
 */
export function readKitchen(input: unknown): KitchenReading {
  const { document, problems } = readDocument(input, {
    format: 'vitrose.kitchen/1',
    shape: kitchenShape,
    nameProblems: () => [],
  });
  if (problems !== undefined) return { kind: 'problems', problems };
  // A test holds the shape against the type, field by field.
  return { kind: 'kitchen', kitchen: document as KitchenDocument };
}
