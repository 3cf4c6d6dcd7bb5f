import { ACID_COMPARISONS } from './comparisons/acids.js';
import { BOILING_COMPARISONS } from './comparisons/boiling.js';
import { DENSITY_COMPARISONS } from './comparisons/density.js';
import { GLASS_COMPARISONS } from './comparisons/glass.js';
import { GRAINING_COMPARISONS } from './comparisons/graining.js';
import { HEAT_COMPARISONS } from './comparisons/heat.js';
import { MOISTURE_COMPARISONS } from './comparisons/moisture.js';
import { NUTRITION_COMPARISONS } from './comparisons/nutrition.js';
import { POLYOL_COMPARISONS } from './comparisons/polyols.js';
import { SOLUTION_COMPARISONS } from './comparisons/solutions.js';
import { STAGES_COMPARISONS } from './comparisons/stages.js';
import { SUCROSE_COMPARISONS } from './comparisons/sucrose.js';
import { SWEETNESS_COMPARISONS } from './comparisons/sweetness.js';
import { SYRUP_COMPARISONS } from './comparisons/syrups.js';
import { type Answer, type Comparison, numberIn } from './comparisons/types.js';
import { WATER_COMPARISONS } from './comparisons/water.js';
import { TABLES, type TableId, tableOf } from './tables/index.js';
import type { EvidenceRow, EvidenceTable, Limit } from './types.js';

/** One row of a table beside what the library answers. */
export type Residual = {
  readonly label: string;
  readonly printed: number;
  readonly computed: number;
  /** Computed less printed, in the unit of the column; divided by the printed value if relative. */
  readonly difference: number;
  /** Whether the band of the model reaches what is printed, where the model gives a band. */
  readonly insideBand?: boolean;
  /** Whether the row keeps its limit, where it has one. */
  readonly insideLimit?: boolean;
  /** The printed row is flagged as suspect. */
  readonly suspect?: true;
};

/** One column of a table held against one model of the library. */
export type Residuals = {
  readonly table: TableId;
  readonly column: string;
  readonly model: string;
  readonly unit: string;
  readonly rows: readonly Residual[];
  /** The row with the largest difference. */
  readonly worst: Residual;
  /** Root mean square of the differences. */
  readonly rms: number;
  /** Whether a test may fail on it. */
  readonly gated: boolean;
  /** What is asked, as the table states it. */
  readonly limits: readonly Limit[];
  /** Whether every limit is kept; absent when nothing is gated. */
  readonly insideLimit?: boolean;
};

const COMPARISONS: readonly Comparison[] = [
  ...WATER_COMPARISONS,
  ...SUCROSE_COMPARISONS,
  ...BOILING_COMPARISONS,
  ...STAGES_COMPARISONS,
  ...SYRUP_COMPARISONS,
  ...SOLUTION_COMPARISONS,
  ...GLASS_COMPARISONS,
  ...POLYOL_COMPARISONS,
  ...SWEETNESS_COMPARISONS,
  ...NUTRITION_COMPARISONS,
  ...GRAINING_COMPARISONS,
  ...MOISTURE_COMPARISONS,
  ...ACID_COMPARISONS,
  ...HEAT_COMPARISONS,
  ...DENSITY_COMPARISONS,
];

/** The tables the library can be held against, in the order of the tables. */
export function comparableTables(): readonly TableId[] {
  return TABLES.map((table) => table.id).filter((id) =>
    COMPARISONS.some((comparison) => comparison.table === id),
  );
}

/**
 * How far the library lies from a printed table: one result for each column that can be compared.
 *
 * Tests and the site read the same differences and the same limits, so they cannot disagree.
 */
export function residuals(table: TableId | EvidenceTable): readonly Residuals[] {
  const evidence = typeof table === 'string' ? tableOf(table) : table;
  return COMPARISONS.filter((comparison) => comparison.table === evidence.id).map((comparison) =>
    compare(evidence, comparison),
  );
}

function compare(table: EvidenceTable, comparison: Comparison): Residuals {
  const { column, model } = comparison;
  const limits = (table.tolerance?.limits ?? []).filter((limit) => limit.column === column);
  const judged = table.rows.flatMap((row) => {
    const answer = comparison.answer(row);
    if (answer === undefined) return [];
    const limit = limits.find((candidate) => fits(candidate, row));
    return [{ limit, residual: judge(row, answer, column, limit) }];
  });
  const rows = judged.map(({ residual }) => residual);
  const worst = rows.reduce<Residual | undefined>(
    (most, row) =>
      most === undefined || Math.abs(row.difference) > Math.abs(most.difference) ? row : most,
    undefined,
  );
  if (worst === undefined) throw new RangeError(`${table.id} has no row to compare in ${column}.`);
  const gated = judged.some(({ limit }) => limit !== undefined);
  const keepsRms = limits.every((limit) => {
    const own = judged.filter((entry) => entry.limit === limit).map((entry) => entry.residual);
    return limit.rms === undefined || rootMeanSquare(own) <= limit.rms;
  });
  return {
    table: table.id as TableId,
    column,
    model,
    unit: comparison.unit ?? table.units[column] ?? '',
    rows,
    worst,
    rms: rootMeanSquare(rows),
    gated,
    limits,
    ...(gated ? { insideLimit: keepsRms && rows.every((row) => row.insideLimit !== false) } : {}),
  };
}

function judge(
  row: EvidenceRow,
  answer: Answer,
  column: string,
  limit: Limit | undefined,
): Residual {
  const { label, computed, band, printedRange } = answer;
  const printed = answer.printed ?? numberIn(row, column);
  const absolute = computed - printed;
  const difference = limit?.relative === true ? absolute / printed : absolute;
  const [low, high] = printedRange ?? [printed, printed];
  const insideBand = band === undefined ? undefined : band[0] <= high && band[1] >= low;
  const insideLimit =
    limit === undefined
      ? undefined
      : (limit.worst === undefined || Math.abs(difference) <= limit.worst) &&
        (limit.insideBand !== true || insideBand === true);
  return {
    label,
    printed,
    computed,
    difference,
    ...(insideBand === undefined ? {} : { insideBand }),
    ...(insideLimit === undefined ? {} : { insideLimit }),
    ...(row.suspect === true ? { suspect: true as const } : {}),
  };
}

function fits({ rows }: Limit, row: EvidenceRow): boolean {
  if (rows === undefined) return true;
  const cell = row[rows.column];
  if (rows.is !== undefined) return rows.is.some((wanted) => wanted === cell);
  return (
    typeof cell === 'number' &&
    cell >= (rows.from ?? Number.NEGATIVE_INFINITY) &&
    cell <= (rows.to ?? Number.POSITIVE_INFINITY)
  );
}

function rootMeanSquare(rows: readonly Residual[]): number {
  if (rows.length === 0) return 0;
  return Math.sqrt(rows.reduce((sum, row) => sum + row.difference ** 2, 0) / rows.length);
}
