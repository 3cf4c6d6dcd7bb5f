import type { StageRange } from 'vitrose';
import type { Point } from '../scale/path.js';

/** Grams of water in 100 g, in the middle of a rung; none where no boil tells it. */
export function waterBeads({ drySolidsMassFraction }: StageRange): number {
  if (drySolidsMassFraction === null) return 0;
  const [low, high] = drySolidsMassFraction;
  return Math.round(100 - 50 * (low + high));
}

/** Places of beads in fives, at most ten in a row, so that they can be counted at a glance. */
export function beadPlaces(count: number, pitch: number): readonly Point[] {
  const perRow = count > 10 ? 10 : 5;
  const rows = Math.ceil(count / perRow);
  return Array.from({ length: count }, (_, at): Point => {
    const column = at % perRow;
    const row = Math.floor(at / perRow);
    const afterFive = column >= 5 ? 0.6 : 0;
    return [(column + afterFive) * pitch, (row - (rows - 1) / 2) * pitch];
  });
}
