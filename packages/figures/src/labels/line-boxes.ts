import type { Point } from '../scale/path.js';
import type { Box } from './place-labels.js';

/** Px; the boxes of a slanting line hug it this closely. */
const PIECE = 8;

/** A line as a row of boxes no label may cover. */
export function lineBoxes(points: readonly Point[], awayPx: number): readonly Box[] {
  return points.slice(1).flatMap(([toX, toY], at) => {
    const [fromX, fromY] = points[at] ?? [toX, toY];
    const pieces = Math.max(
      1,
      Math.ceil(Math.min(Math.abs(toX - fromX), Math.abs(toY - fromY)) / PIECE),
    );
    return Array.from({ length: pieces }, (_, piece): Box => {
      const along = (part: number): Point => [
        fromX + ((toX - fromX) * part) / pieces,
        fromY + ((toY - fromY) * part) / pieces,
      ];
      const [[x0, y0], [x1, y1]] = [along(piece), along(piece + 1)];
      return {
        left: Math.min(x0, x1) - awayPx,
        right: Math.max(x0, x1) + awayPx,
        top: Math.min(y0, y1) - awayPx,
        bottom: Math.max(y0, y1) + awayPx,
      };
    });
  });
}
