import { findJumps } from './second-difference.js';
import type { EvidenceTable } from './types.js';

export { findJumps } from './second-difference.js';

/** One thing wrong with a table. */
export type Flag = {
  readonly table: string;
  readonly rule: 'rows' | 'sum' | 'row-total' | 'unit' | 'grade' | 'jump' | 'suspect';
  readonly message: string;
};

/** Float sums of a few hundred cells differ in the last digits; a slipped digit differs by far more. */
const SUM_TOLERANCE = 1e-9;

/**
 * What is wrong with a table.
 *
 * A jump that is flagged `suspect` and explained in a note stands as printed; one that is not is an
 * error, and so is a flag that nobody explains.
 */
export function lintTable(table: EvidenceTable): readonly Flag[] {
  return [
    ...lintCounts(table),
    ...lintRowTotals(table),
    ...lintUnits(table),
    ...lintGrades(table),
    ...lintJumps(table),
  ];
}

function lintCounts(table: EvidenceTable): readonly Flag[] {
  const flags: Flag[] = [];
  if (table.rows.length !== table.check.rows) {
    flags.push(flag(table, 'rows', `${table.rows.length} rows, ${table.check.rows} entered`));
  }
  for (const column of numericColumns(table)) {
    const frozen = table.check.sums[column];
    const sum = columnSum(table, column);
    if (frozen === undefined) {
      flags.push(flag(table, 'sum', `no frozen sum of ${column}`));
    } else if (Math.abs(sum - frozen) > SUM_TOLERANCE * Math.max(1, Math.abs(frozen))) {
      flags.push(flag(table, 'sum', `${column} adds up to ${sum}, ${frozen} entered`));
    }
  }
  return flags;
}

function lintRowTotals(table: EvidenceTable): readonly Flag[] {
  const wanted = table.check.rowTotals;
  if (wanted === undefined) return [];
  return table.rows.flatMap((row, index) => {
    const total = wanted.columns.reduce((sum, column) => sum + (numberIn(row[column]) ?? 0), 0);
    return Math.abs(total - wanted.total) > wanted.within + SUM_TOLERANCE
      ? [flag(table, 'row-total', `row ${index} adds up to ${total}, not ${wanted.total}`)]
      : [];
  });
}

function lintUnits(table: EvidenceTable): readonly Flag[] {
  const columns = numericColumns(table);
  return [
    ...columns
      .filter((column) => table.units[column] === undefined)
      .map((column) => flag(table, 'unit', `${column} has no unit`)),
    ...Object.keys(table.units)
      .filter((column) => !columns.includes(column))
      .map((column) => flag(table, 'unit', `${column} has a unit and no number`)),
  ];
}

function lintGrades(table: EvidenceTable): readonly Flag[] {
  if (table.grade !== 'mixed') return [];
  return table.rows.flatMap((row, index) =>
    typeof row.grade === 'string' ? [] : [flag(table, 'grade', `row ${index} has no grade`)],
  );
}

function lintJumps(table: EvidenceTable): readonly Flag[] {
  const unexplained = (table.smooth ?? []).flatMap((pair) =>
    findJumps(table.rows, pair)
      .filter((index) => table.rows[index]?.suspect !== true)
      .map((index) => flag(table, 'jump', `${pair.y} jumps at row ${index}`)),
  );
  const unnoted = table.rows.flatMap((row, index) =>
    row.suspect === true && (typeof row.note !== 'string' || row.note === '')
      ? [flag(table, 'suspect', `row ${index} is suspect and does not say why`)]
      : [],
  );
  return [...unexplained, ...unnoted];
}

function numericColumns(table: EvidenceTable): readonly string[] {
  const columns = new Set<string>();
  for (const row of table.rows) {
    for (const [column, cell] of Object.entries(row)) {
      if (typeof cell === 'number') columns.add(column);
    }
  }
  return [...columns];
}

function columnSum(table: EvidenceTable, column: string): number {
  return table.rows.reduce((sum, row) => sum + (numberIn(row[column]) ?? 0), 0);
}

function numberIn(cell: unknown): number | undefined {
  return typeof cell === 'number' ? cell : undefined;
}

function flag(table: EvidenceTable, rule: Flag['rule'], message: string): Flag {
  return { table: table.id, rule, message };
}
