import {
  comparableTables,
  type EvidenceTable,
  type Residual,
  type Residuals,
  residuals,
  tableOf,
} from '@vitrose/evidence';

/** One printed column beside the library, ready for a page. */
export type Compared = {
  readonly of: Residuals;
  readonly table: EvidenceTable;
  /** Computed by us: it shows that the code is right, not that the model is. */
  readonly own: boolean;
};

/** One row, off by how much in the unit of its column. */
export type Off = { readonly row: Residual; readonly by: number };

/** Every compared column of some functions, or of all. */
export function compared(functions?: readonly string[]): readonly Compared[] {
  return comparableTables()
    .flatMap((id) => residuals(id).map((of) => ({ of, table: tableOf(id) })))
    .filter(({ of }) => functions === undefined || functions.includes(of.model))
    .map(({ of, table }) => ({ of, table, own: isOwnCheck(of, table) }));
}

/** Columns of one table together, in the order the tables first come. */
export function byTable(columns: readonly Compared[]): readonly [Compared, ...Compared[]][] {
  const groups: [Compared, ...Compared[]][] = [];
  for (const column of columns) {
    const group = groups.find(([first]) => first.table.id === column.table.id);
    if (group === undefined) groups.push([column]);
    else group.push(column);
  }
  return groups;
}

/** Differences in the unit of the column: a limit may be stated as a fraction, a page never is. */
export function offs({ of }: Compared): readonly Off[] {
  return of.rows.map((row) => ({ row, by: row.computed - row.printed }));
}

/** The row that is off by most. */
export function furthest(of: readonly Off[]): Off {
  return of.reduce((most, one) => (Math.abs(one.by) > Math.abs(most.by) ? one : most));
}

/**
 * A table we computed, or a column that holds the very values the library took over, cannot
 * contradict it.
 */
function isOwnCheck({ column }: Residuals, { grade }: EvidenceTable): boolean {
  return grade === 'derived' || column.startsWith('recommended');
}
