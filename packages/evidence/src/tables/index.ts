import type { EvidenceTable } from '../types.js';
import { BOILING_TABLES } from './boiling/index.js';
import { DENSITY_TABLES } from './density/index.js';
import { GLASS_TABLES } from './glass/index.js';
import { GRAINING_TABLES } from './graining/index.js';
import { HEAT_TABLES } from './heat/index.js';
import { INGREDIENTS_TABLES } from './ingredients/index.js';
import { INVERSION_TABLES } from './inversion/index.js';
import { KITCHEN_TABLES } from './kitchen/index.js';
import { NUTRITION_TABLES } from './nutrition/index.js';
import { PRACTICE_TABLES } from './practice/index.js';
import { STAGES_TABLES } from './stages/index.js';
import { SWEETNESS_TABLES } from './sweetness/index.js';
import { SYRUP_TABLES } from './syrup/index.js';

/** Every table, family by family. */
export const TABLES = [
  ...BOILING_TABLES,
  ...STAGES_TABLES,
  ...SYRUP_TABLES,
  ...GLASS_TABLES,
  ...DENSITY_TABLES,
  ...HEAT_TABLES,
  ...GRAINING_TABLES,
  ...INVERSION_TABLES,
  ...SWEETNESS_TABLES,
  ...NUTRITION_TABLES,
  ...PRACTICE_TABLES,
  ...INGREDIENTS_TABLES,
  ...KITCHEN_TABLES,
] as const satisfies readonly EvidenceTable[];

/** The id of a table. */
export type TableId = (typeof TABLES)[number]['id'];

/** A table by its id. */
export function tableOf(id: TableId): EvidenceTable {
  const found = TABLES.find((table) => table.id === id);
  if (found === undefined) throw new RangeError(`There is no table called ${id}.`);
  return found;
}
