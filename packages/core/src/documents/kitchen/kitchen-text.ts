import { kitchenShape } from '../shape/kitchen.js';
import { inOrder } from '../writing/in-order.js';
import type { KitchenDocument } from './types.js';

/**
 * A kitchen as the text of a file: indented JSON, its fields always in the same order.
 *
 * @param kitchen - The kitchen to write.
 * @returns JSON with a line break at its end. `readKitchen` gives the same kitchen back.
 * @throws `ModelRangeError` if a number is not finite.
 * @example
 * JSON.parse(kitchenText({ format: 'vitrose.kitchen/1', pan: { capacityMl: 1_500 } })).pan.capacityMl // 1500
 */
export function kitchenText(kitchen: KitchenDocument): string {
  return `${JSON.stringify(inOrder([kitchenShape], kitchen, ''), null, 2)}\n`;
}
