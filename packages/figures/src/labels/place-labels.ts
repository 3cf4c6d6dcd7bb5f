import type { Point } from '../scale/path.js';
import { textWidthPx } from './text-width.js';

/** A rectangle on the page, px. */
export type Box = {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
};

/** A label of one line or more, and the places it would like, the best first. */
export type WantedLabel = {
  readonly id: string;
  readonly lines: readonly string[];
  readonly sizePx: number;
  readonly anchor: 'start' | 'middle' | 'end';
  /** An end or the middle of its first baseline, by the anchor. */
  readonly places: readonly Point[];
};

/** A label that found a place. */
export type PlacedLabel = WantedLabel & {
  readonly x: number;
  readonly y: number;
  readonly box: Box;
};

/** From one baseline to the next, in sizes of the letters. */
export const LINE_SPACING = 1.2;

/** The box of a label whose first baseline is here. */
export function labelBox(
  { lines, sizePx, anchor }: Omit<WantedLabel, 'id' | 'places'>,
  [x, y]: Point,
): Box {
  const width = Math.max(...lines.map((line) => textWidthPx(line, sizePx)));
  const left = x - width * { start: 0, middle: 0.5, end: 1 }[anchor];
  return {
    left,
    right: left + width,
    top: y - 0.82 * sizePx,
    bottom: y + (0.26 + LINE_SPACING * (lines.length - 1)) * sizePx,
  };
}

/** Whether two boxes share more than an edge. */
export function overlap(one: Box, other: Box): boolean {
  return (
    one.left < other.right &&
    other.left < one.right &&
    one.top < other.bottom &&
    other.top < one.bottom
  );
}

/** A hair of paper stays between two labels. */
function grown({ left, top, right, bottom }: Box): Box {
  return { left: left - 1, top: top - 1, right: right + 1, bottom: bottom + 1 };
}

/**
 * Gives every label the first of its places that is free.
 *
 * Earlier labels go before later ones. A label none of whose places is free is left out: a figure
 * with one name fewer can be read, one with two names over each other cannot.
 *
 * @param wanted - The most important first.
 * @param within - No label leaves this box.
 * @param taken - What may not be covered.
 */
export function placeLabels(
  wanted: readonly WantedLabel[],
  within: Box,
  taken: readonly Box[] = [],
): readonly PlacedLabel[] {
  const placed: PlacedLabel[] = [];
  for (const label of wanted) {
    for (const place of label.places) {
      const box = labelBox(label, place);
      const inside =
        box.left >= within.left &&
        box.right <= within.right &&
        box.top >= within.top &&
        box.bottom <= within.bottom;
      const free = ![...taken, ...placed.map((other) => other.box)].some((one) =>
        overlap(one, grown(box)),
      );
      if (!inside || !free) continue;
      placed.push({ ...label, x: place[0], y: place[1], box });
      break;
    }
  }
  return placed;
}
