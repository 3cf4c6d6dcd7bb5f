import { comparableTables, type Residuals, residuals, tableOf } from '@vitrose/evidence';
import { afterAll, describe, expect, it } from 'vitest';

const lines: string[] = [];

function lineOf({ table, column, model, unit, rows, worst, rms, gated }: Residuals): string {
  const difference = worst.difference.toPrecision(3);
  return [
    gated ? 'gated' : 'shown',
    `${table} · ${column} · ${model}`,
    `${rows.length} rows, rms ${rms.toPrecision(3)}, worst ${difference} (${unit}) at ${worst.label}`,
  ].join(' | ');
}

describe('the library against every table it can be held against', () => {
  describe.each(comparableTables())('%s', (id) => {
    it('lies inside what the table allows', () => {
      for (const result of residuals(id)) {
        lines.push(lineOf(result));
        expect(result.rows.length, result.column).toBeGreaterThan(0);
        const outside = result.rows.filter(({ insideLimit }) => insideLimit === false);
        expect(outside, `${id}, ${result.column}`).toEqual([]);
        if (result.gated) expect(result.insideLimit, `${id}, ${result.column}`).toBe(true);
      }
    });

    it('answers every limit with a comparison', () => {
      const compared = residuals(id).map(({ column }) => column);
      const gated = residuals(id).filter((result) => result.gated);
      const limits = tableOf(id).tolerance?.limits ?? [];
      for (const { column } of limits) expect(compared, id).toContain(column);
      expect(gated.length > 0).toBe(limits.length > 0);
    });
  });

  afterAll(() => {
    process.stdout.write(`${lines.join('\n')}\n`);
  });
});

describe('the bands of the boiling model', () => {
  /** Two printed rows are known to lie outside, and are named in the tables. */
  const NAMED = [
    'stages-boiling-crosscheck, 95 % solids',
    'boiling-sucrose-starzak-peacock, 99 % solids',
  ];

  it('hold every printed boiling point but the two that are named', () => {
    const outside = comparableTables()
      .flatMap((id) => residuals(id))
      .filter(({ model }) => model === 'boilingPoint')
      .flatMap(({ table, rows }) =>
        rows
          .filter(({ insideBand }) => insideBand === false)
          .map(({ label }) => `${table}, ${label}`),
      );
    expect([...new Set(outside)].sort()).toEqual([...NAMED].sort());
  });
});
