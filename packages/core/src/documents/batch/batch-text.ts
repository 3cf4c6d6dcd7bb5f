import type { BatchDocument } from '../../job/batch/types.js';
import { batchShape } from '../shape/batch.js';
import { inOrder } from '../writing/in-order.js';

/**
 * A batch as the text of a file: indented JSON, its fields always in the same order, so that two
 * versions of a recipe can be compared line by line.
 *
 * It writes the lowest format number that can carry the batch; so far there is one.
 *
 * @param batch - The batch to write.
 * @returns JSON with a line break at its end. `readBatch` gives the same batch back.
 * @throws `ModelRangeError` if a number is not finite.
 * @example
 * const text = batchText({ cook: { toSeaLevelC: 148 }, formula: [], format: 'vitrose.batch/1' });
 * text.split('\n')[1] // '  "format": "vitrose.batch/1",'
 */
export function batchText(batch: BatchDocument): string {
  return `${JSON.stringify(inOrder([batchShape], batch, ''), null, 2)}\n`;
}
