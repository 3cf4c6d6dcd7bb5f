import { kitchenMeasuresTable } from './kitchen-measures.js';

export { kitchenMeasuresTable };

/** Every table of this family. */
export const KITCHEN_TABLES = [kitchenMeasuresTable] as const;
