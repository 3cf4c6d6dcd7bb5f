import { kitchenFields } from './kitchen-fields.js';
import type { Shape } from './types.js';

/** `vitrose.kitchen/1`. */
export const kitchenShape = {
  fields: { format: ['vitrose.kitchen/1'], ...kitchenFields },
} as const satisfies Shape;
