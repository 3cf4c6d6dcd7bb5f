import type { EvidenceRow, SmoothPair } from './types.js';

/** A second difference this many times its neighbours' median is a jump. */
const JUMP_FACTOR = 4;

/** How many second differences on each side are neighbours. */
const REACH = 3;

type Point = { readonly row: number; readonly x: number; readonly y: number };
type Bend = { readonly row: number; readonly size: number; readonly rounding: number };

/**
 * The rows where a printed curve jumps.
 *
 * A slipped digit bends a smooth curve at one point. The bend is measured by the second divided
 * difference, which allows for uneven steps, and compared with the median of its neighbours. The
 * half unit of the last printed digit is allowed for: rounding alone bends a curve too. A slip also
 * bends the curve at the rows beside it, so of a run of bends only the largest is reported.
 *
 * @returns row numbers, in order; the first and the last row of a curve cannot be judged.
 */
export function findJumps(rows: readonly EvidenceRow[], pair: SmoothPair): readonly number[] {
  return curvesOf(rows, pair)
    .flatMap((curve) => jumpsOn(curve))
    .sort((a, b) => a - b);
}

function curvesOf(
  rows: readonly EvidenceRow[],
  { x, y, by = [] }: SmoothPair,
): readonly (readonly Point[])[] {
  const curves = new Map<string, Point[]>();
  rows.forEach((row, index) => {
    const abscissa = row[x];
    const ordinate = row[y];
    if (typeof abscissa !== 'number' || typeof ordinate !== 'number') return;
    const key = JSON.stringify(by.map((column) => row[column]));
    const curve = curves.get(key) ?? [];
    curve.push({ row: index, x: abscissa, y: ordinate });
    curves.set(key, curve);
  });
  return [...curves.values()].map((curve) => [...curve].sort((a, b) => a.x - b.x));
}

function jumpsOn(curve: readonly Point[]): readonly number[] {
  const bends = bendsOf(curve);
  const excess = bends.map((bend, index) => {
    const neighbours = bends
      .slice(Math.max(0, index - REACH), index + REACH + 1)
      .filter((other) => other !== bend)
      .map((other) => Math.abs(other.size));
    if (neighbours.length < 2) return 0;
    const allowed = JUMP_FACTOR * median(neighbours) + bend.rounding;
    return Math.max(0, Math.abs(bend.size) / allowed - 1);
  });
  return bends.flatMap((bend, index) => {
    const here = excess[index] ?? 0;
    const before = excess[index - 1] ?? 0;
    const after = excess[index + 1] ?? 0;
    return here > 0 && here >= before && here >= after ? [bend.row] : [];
  });
}

function bendsOf(curve: readonly Point[]): readonly Bend[] {
  const halfUnit = 0.5 * 10 ** -Math.max(...curve.map((point) => decimals(point.y)));
  return curve.slice(1, -1).flatMap((middle, index) => {
    const left = curve[index];
    const right = curve[index + 2];
    if (left === undefined || right === undefined) return [];
    const before = 1 / (middle.x - left.x);
    const after = 1 / (right.x - middle.x);
    const across = right.x - left.x;
    const slopeBefore = (middle.y - left.y) * before;
    const slopeAfter = (right.y - middle.y) * after;
    return [
      {
        row: middle.row,
        size: (2 * (slopeAfter - slopeBefore)) / across,
        rounding: (4 * halfUnit * (before + after)) / across,
      },
    ];
  });
}

function decimals(value: number): number {
  const [digits = '', exponent = '0'] = String(value).split('e');
  const [, fraction = ''] = digits.split('.');
  return Math.max(0, fraction.length - Number(exponent));
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = Math.floor(sorted.length / 2);
  const upper = sorted[half] ?? 0;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? 0) + upper) / 2;
}
