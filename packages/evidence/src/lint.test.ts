import { describe, expect, it } from 'vitest';
import { findJumps, lintTable } from './lint.js';
import {
  boilingCandyRegimeTable,
  boilingPsatCheckTable,
  boilingSucroseGerlachTable,
} from './tables/boiling/index.js';
import { TABLES } from './tables/index.js';
import { syrupProfilesTable, syrupRefractiveIndexTable } from './tables/syrup/index.js';
import type { EvidenceRow, EvidenceTable } from './types.js';

/** The table with one cell written anew. */
function slipped(table: EvidenceTable, index: number, cells: EvidenceRow): EvidenceTable {
  const rows = table.rows.map((row, at) => (at === index ? { ...row, ...cells } : row));
  return { ...table, rows };
}

const rulesOf = (table: EvidenceTable) => lintTable(table).map(({ rule }) => rule);

describe('every table of the evidence', () => {
  it.each(TABLES.map((table) => [table.id, table] as const))(
    '%s holds what was entered',
    (_, table) => {
      expect(lintTable(table)).toEqual([]);
    },
  );

  it('has an id of its own', () => {
    const ids = TABLES.map(({ id }) => id);
    expect(new Set(ids).size).toBe(ids.length);
  });

  it('names its limits after its own columns', () => {
    for (const table of TABLES as readonly EvidenceTable[]) {
      for (const { column, rows } of table.tolerance?.limits ?? []) {
        expect(table.units, table.id).toHaveProperty(column);
        if (rows !== undefined) expect(table.rows[0], table.id).toHaveProperty(rows.column);
      }
    }
  });
});

describe('the second difference', () => {
  it('finds two digits swapped in the vapour pressure of water', () => {
    const pair = { x: 'temperatureC', y: 'vapourPressureKPa' };
    expect(findJumps(boilingPsatCheckTable.rows, pair)).toEqual([]);
    const planted = slipped(boilingPsatCheckTable, 16, { vapourPressureKPa: 86.40899 });
    expect(findJumps(planted.rows, pair)).toEqual([16]);
  });

  it('finds a digit too many in an old boiling table', () => {
    const pair = { x: 'drySolidsPercent', y: 'boilingPointC' };
    const known = findJumps(boilingSucroseGerlachTable.rows, pair);
    const planted = slipped(boilingSucroseGerlachTable, 12, { boilingPointC: 112.9 });
    expect(findJumps(planted.rows, pair)).toEqual([...known, 12]);
  });

  it('finds a hundredth too many, a misprint met in print, in a table of refraction', () => {
    const pair = { x: 'drySolidsPercent', y: 'indexAt45C' };
    expect(findJumps(syrupRefractiveIndexTable.rows, pair)).toEqual([]);
    const planted = slipped(syrupRefractiveIndexTable, 13, { indexAt45C: 1.43447 });
    expect(findJumps(planted.rows, pair)).toEqual([13]);
  });

  it('does not mistake rounding for a slip', () => {
    const rows = Array.from({ length: 12 }, (_, x) => ({
      x,
      y: Math.round(3 * x + 0.4 * (x % 2)),
    }));
    expect(findJumps(rows, { x: 'x', y: 'y' })).toEqual([]);
  });

  it('allows for steps of different width', () => {
    const rows = [0, 1, 2, 10, 11, 30, 50, 51, 52, 90].map((x) => ({ x, y: x ** 2 / 1_000 }));
    expect(findJumps(rows, { x: 'x', y: 'y' })).toEqual([]);
  });
});

describe('the lint', () => {
  it('fails on a jump that nobody flagged', () => {
    const { suspect, note, ...plain } = boilingCandyRegimeTable.rows[9];
    const rows: readonly EvidenceRow[] = boilingCandyRegimeTable.rows.map((row, index) =>
      index === 9 ? plain : row,
    );
    expect([suspect, typeof note]).toEqual([true, 'string']);
    expect(rulesOf({ ...boilingCandyRegimeTable, rows })).toEqual(['jump']);
  });

  it('fails on a flag that nobody explains', () => {
    expect(rulesOf(slipped(boilingCandyRegimeTable, 8, { note: '' }))).toEqual(['suspect']);
  });

  it('fails on a digit that changes a sum, a lost row and a missing sum', () => {
    expect(rulesOf(slipped(boilingSucroseGerlachTable, 0, { boilingPointC: 100.5 }))).toEqual([
      'sum',
    ]);
    const rows = boilingSucroseGerlachTable.rows.slice(0, 10);
    expect(rulesOf({ ...boilingSucroseGerlachTable, rows })).toEqual(['rows', 'sum', 'sum']);
    const check = { rows: 17, sums: { drySolidsPercent: 1_101 } };
    expect(rulesOf({ ...boilingSucroseGerlachTable, check })).toContain('sum');
  });

  it('fails on a profile that does not add up, though its column sums do', () => {
    const [first, second, ...rest] = syrupProfilesTable.rows;
    const rows: readonly EvidenceRow[] = [
      { ...first, dp1Percent: first.dp1Percent + 1 },
      { ...second, dp1Percent: second.dp1Percent - 1 },
      ...rest,
    ];
    expect(rulesOf({ ...syrupProfilesTable, rows })).toEqual(['row-total', 'row-total']);
  });

  it('asks for a unit of every number and a grade of every row', () => {
    const { boilingPointC: _, ...units } = boilingSucroseGerlachTable.units;
    expect(rulesOf({ ...boilingSucroseGerlachTable, units })).toEqual(['unit']);
    expect(rulesOf({ ...syrupProfilesTable, grade: 'mixed' })).toEqual(
      syrupProfilesTable.rows.map(() => 'grade'),
    );
  });
});
