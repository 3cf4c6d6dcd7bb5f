import { ingredientsDefaultsTable } from './ingredients-defaults.js';

export { ingredientsDefaultsTable };

/** Every table of this family. */
export const INGREDIENTS_TABLES = [ingredientsDefaultsTable] as const;
