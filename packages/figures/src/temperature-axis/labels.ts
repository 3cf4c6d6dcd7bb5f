import {
  type Box,
  LINE_SPACING,
  labelBox,
  overlap,
  type PlacedLabel,
  placeLabels,
  type WantedLabel,
} from '../labels/place-labels.js';
import { spread } from '../labels/spread.js';
import { textWidthPx } from '../labels/text-width.js';
import { temperature } from '../ladder/temperature-words.js';
import type { Point } from '../scale/path.js';
import { type PlacedWindow, placeOf, type TemperatureAxisLayout } from './layout.js';
import { type AxisMark, shownMarks } from './marks.js';
import { MARK_LABELS, WINDOW_LABELS, windowName } from './words.js';

/** The name of a mark beside the bars, and where its line ends. */
export type MarkLabel = {
  readonly mark: AxisMark;
  readonly lines: readonly [string, string];
  /** The line of the mark leaves the bars here. */
  readonly from: Point;
  /** And meets its name here. */
  readonly to: Point;
  /** The first baseline. */
  readonly at: Point;
};

/** From the name of a mark to its temperature, in sizes of the letters. */
export const MARK_LINE = 1.15;

/** The names of the marks, none over another: beside a standing axis, above a lying one. */
export function markLabels(layout: TemperatureAxisLayout): readonly MarkLabel[] {
  const { lies, textPx, state, right, top, widthPx, heightPx } = layout;
  const marks = shownMarks(state);
  const inOrder = lies ? [...marks].reverse() : marks;
  const labels = inOrder.map((mark) => {
    const lines = [
      MARK_LABELS[mark.id],
      temperature(mark.temperatureC, state.units ?? 'c'),
    ] as const;
    const width = Math.max(...lines.map((line) => textWidthPx(line, textPx)));
    return { mark, lines, width, place: placeOf(layout, mark.temperatureC) };
  });
  const middles = spread(
    labels.map(({ place, width }) => ({
      middle: place,
      size: lies ? width + textPx * 0.5 : textPx * 2.6,
    })),
    lies ? [2, widthPx - 2] : [2, heightPx - 2],
  );
  return labels.map(({ mark, lines, place }, at) => {
    const middle = middles[at] ?? place;
    return lies
      ? {
          mark,
          lines,
          from: [place, top],
          to: [middle, top - textPx * 0.9],
          at: [middle, top - textPx * (1.3 + MARK_LINE)],
        }
      : {
          mark,
          lines,
          from: [right, place],
          to: [right + textPx * 0.9, middle],
          at: [right + textPx * 1.2, middle - textPx * 0.295],
        };
  });
}

/**
 * The names of the windows: on or at their bars where the axis stands, before their rows where it lies.
 *
 * A name that finds no place between the marks stands on one, and the line of the mark steps over it.
 */
export function windowLabels(layout: TemperatureAxisLayout): readonly PlacedLabel[] {
  const { lies, left, right, top, bottom, windows, textPx } = layout;
  if (lies) {
    const rows = windows.map((placed) => rowLabel(layout, placed));
    return placeLabels(rows, { left: 0, right: left, top, bottom });
  }
  const wanted = windows.map((placed) => laneLabel(layout, placed));
  const bounds = { left: left + 2, right, top: top - textPx * 0.5, bottom };
  const clear = placeLabels(wanted, bounds, markBoxes(layout));
  const missing = wanted.filter((label) => clear.every(({ id }) => id !== label.id));
  const crossed = placeLabels(
    missing,
    bounds,
    clear.map(({ box }) => box),
  );
  return [...clear, ...crossed];
}

function rowLabel({ textPx, left }: TemperatureAxisLayout, placed: PlacedWindow): WantedLabel {
  const { bar, window } = placed;
  return {
    id: window.id,
    lines: [windowName(window.id)],
    sizePx: textPx,
    anchor: 'end',
    places: [[left - textPx * 0.8, (bar.near + bar.far) / 2 + textPx * 0.35]],
  };
}

/** In the middle of its bar, or as near to it as the marks allow; else just under or over it, on no other bar. */
function laneLabel({ textPx, windows }: TemperatureAxisLayout, placed: PlacedWindow): WantedLabel {
  const { bar, window } = placed;
  const name = windowName(window.id);
  const fits = textWidthPx(name, textPx) < bar.far - bar.near - textPx;
  const lines = fits ? [name] : WINDOW_LABELS[window.id];
  const label = { lines, sizePx: textPx, anchor: 'middle' as const };
  const across = (bar.near + bar.far) / 2;
  const lower = (label.lines.length - 1) * LINE_SPACING * textPx;
  const middle = (bar.from + bar.to - lower) / 2 + textPx * 0.3;
  const steps = Array.from({ length: 160 }, (_, at) => (at % 2 === 0 ? at : -at - 1) / 2);
  const inside = steps
    .map((step): Point => [across, middle + step * 0.25 * textPx])
    .filter((place) => contains(barBox(bar), labelBox(label, place)));
  const outside = [1.15, 1.6]
    .flatMap((away) => [bar.to + away * textPx, bar.from - away * textPx - lower])
    .map((y): Point => [across, y])
    .filter((place) => windows.every((one) => !overlap(barBox(one.bar), labelBox(label, place))));
  return { id: window.id, ...label, places: [...inside, ...outside] };
}

function barBox({ near, far, from, to }: PlacedWindow['bar']): Box {
  return { left: near, right: far, top: from, bottom: to };
}

function contains(outer: Box, inner: Box): boolean {
  return (
    inner.left >= outer.left + 1 &&
    inner.right <= outer.right - 1 &&
    inner.top >= outer.top + 1 &&
    inner.bottom <= outer.bottom - 1
  );
}

/** The lines across the bars. */
function markBoxes(layout: TemperatureAxisLayout): readonly Box[] {
  const { left, right, state, textPx } = layout;
  return shownMarks(state).map(({ temperatureC }) => {
    const y = placeOf(layout, temperatureC);
    return { left, right, top: y - textPx * 0.25, bottom: y + textPx * 0.25 };
  });
}
