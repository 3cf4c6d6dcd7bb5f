/** One equation of a fit: the coefficients of the unknowns, the target, and how far it may be off. */
export type Equation = {
  readonly coefficients: readonly number[];
  readonly target: number;
  readonly uncertainty: number;
};

/** The unknowns that make the weighted squares least, by the normal equations. */
export function leastSquares(equations: readonly Equation[]): readonly number[] {
  const size = equations[0]?.coefficients.length ?? 0;
  const rows = Array.from({ length: size }, () => new Array<number>(size + 1).fill(0));
  for (const { coefficients, target, uncertainty } of equations) {
    const weight = 1 / uncertainty ** 2;
    coefficients.forEach((left, i) => {
      const row = rows[i];
      if (row === undefined) return;
      coefficients.forEach((right, j) => {
        row[j] = (row[j] ?? 0) + weight * left * right;
      });
      row[size] = (row[size] ?? 0) + weight * left * target;
    });
  }
  return solve(rows);
}

/** Gauss–Jordan elimination with the largest pivot first. */
function solve(rows: number[][]): readonly number[] {
  const size = rows.length;
  for (let column = 0; column < size; column += 1) {
    const rest = rows.slice(column);
    const best = rest.reduce(
      (most, row, index) =>
        Math.abs(row[column] ?? 0) > Math.abs(rest[most]?.[column] ?? 0) ? index : most,
      0,
    );
    const [pivot] = rows.splice(column + best, 1);
    const lead = pivot?.[column] ?? 0;
    if (pivot === undefined || lead === 0) throw new RangeError('The equations do not tell.');
    const scaled = pivot.map((cell) => cell / lead);
    rows.splice(column, 0, scaled);
    rows.forEach((row, index) => {
      const factor = row[column] ?? 0;
      if (index === column) return;
      rows[index] = row.map((cell, j) => cell - factor * (scaled[j] ?? 0));
    });
  }
  return rows.map((row) => row[size] ?? Number.NaN);
}
