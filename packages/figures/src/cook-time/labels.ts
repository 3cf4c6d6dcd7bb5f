import { lineBoxes } from '../labels/line-boxes.js';
import {
  type Box,
  labelBox,
  type PlacedLabel,
  placeLabels,
  type WantedLabel,
} from '../labels/place-labels.js';
import { textWidthPx } from '../labels/text-width.js';
import type { Point } from '../scale/path.js';
import { type CookTimeLayout, lateText, placeOf } from './layout.js';
import type { CookMoment } from './state.js';
import { COOK_MOMENT_LABELS, minutesSpan } from './words.js';

/** The name of a moment from the stop on, in the column at the right, and the line that leads to it. */
export type LateLabel = {
  readonly moment: CookMoment;
  readonly text: string;
  readonly from: Point;
  /** Its baseline. */
  readonly at: Point;
};

const LINE = 1.3;

/**
 * The names from the stop on, one under the other as they come.
 *
 * None stands lower than its moment, so that no leading line crosses the cooling mass or another.
 */
export function lateLabels(layout: CookTimeLayout): readonly LateLabel[] {
  const { course, textPx, namesLeft, state } = layout;
  const line = textPx * LINE;
  let lowest = Number.POSITIVE_INFINITY;
  const rising = [...course.late].reverse().map((moment) => {
    const from = placeOf(layout, moment);
    lowest = Math.min(from[1] + textPx * 0.35, lowest - line);
    return { moment, from, y: lowest };
  });
  let highest = textPx;
  return rising.reverse().map(({ moment, from, y }) => {
    const baseline = Math.max(y, highest);
    highest = baseline + line;
    return { moment, text: lateText(moment, state), from, at: [namesLeft, baseline] };
  });
}

/** The names on the way up, and what the band on the clock says. */
export function cookTimeLabels(
  layout: CookTimeLayout,
  late: readonly LateLabel[],
): readonly PlacedLabel[] {
  const { left, bottom, textPx, widthPx, course } = layout;
  return placeLabels(
    [bandLabel(layout), ...course.early.map((moment) => earlyLabel(layout, moment))],
    { left: left + 3, right: widthPx - 2, top: textPx * 2, bottom: bottom - 2 },
    taken(layout, late),
  );
}

/** Under the line to the right of its moment, on this side of the stop; or over it to the left. */
function earlyLabel(layout: CookTimeLayout, moment: CookMoment): WantedLabel {
  const { textPx, course, x: clock } = layout;
  const text = COOK_MOMENT_LABELS[moment.id];
  const width = textWidthPx(text, textPx);
  const [x, y] = placeOf(layout, moment);
  const stopX = clock.at(course.stop.minutes);
  const near = [0.4, 0.8, 1.3, 2, 3, 4.2, 5.6];
  const under = near.flatMap((far): readonly Point[] =>
    [1.25, 1.7, 2.3].map((down): Point => [x + far * textPx, y + down * textPx]),
  );
  const over = [0.4, 0.8].flatMap((far): readonly Point[] =>
    [-0.2, 0.2, 0.6, 1.1].map((up): Point => [x - width - far * textPx, y - up * textPx]),
  );
  const beforeStop = [2, 2.6, 3.2, 4, 5, 6, 7.5].map(
    (down): Point => [stopX - width - textPx * 0.5, y + down * textPx],
  );
  return {
    id: moment.id,
    lines: [text],
    sizePx: textPx,
    anchor: 'start',
    places: [
      ...under.filter(([begin]) => begin + width < stopX),
      ...over,
      ...beforeStop,
      ...anywhere(layout, [x - width / 2, y]),
    ],
  };
}

/** Beside the foot of the line that falls from the stop. */
function bandLabel(layout: CookTimeLayout): WantedLabel {
  const { textPx, bottom, x, course, state } = layout;
  const text = `stop: ${minutesSpan(state.bandMinutes)} min`;
  const stopX = x.at(course.stop.minutes);
  const width = textWidthPx(text, textPx);
  const up = [1.3, 1.9, 2.7, 3.7, 5, 6.5];
  return {
    id: 'band',
    lines: [text],
    sizePx: textPx,
    anchor: 'start',
    places: [
      ...up.flatMap((rise): readonly Point[] => [
        [stopX + 0.6 * textPx, bottom - rise * textPx],
        [stopX - 0.6 * textPx - width, bottom - rise * textPx],
      ]),
      ...anywhere(layout, [stopX - width / 2, bottom]),
    ],
  };
}

/** All over the drawing, the nearest first. */
function anywhere(
  { left, right, top, bottom, textPx }: CookTimeLayout,
  [x, y]: Point,
): readonly Point[] {
  const columns = Math.floor((right - left) / textPx);
  const rows = Math.floor((bottom - top) / textPx);
  return Array.from(
    { length: columns * rows },
    (_, at): Point => [
      left + textPx * (0.3 + (at % columns)),
      bottom - textPx * (0.5 + Math.floor(at / columns)),
    ],
  ).sort(
    (one, other) => Math.hypot(one[0] - x, one[1] - y) - Math.hypot(other[0] - x, other[1] - y),
  );
}

/** From a moment on the way up to its name, where it had to go further off. */
export function earlyLead(layout: CookTimeLayout, { id, box }: PlacedLabel): readonly Point[] {
  const moment = layout.course.early.find((one) => one.id === id);
  if (moment === undefined) return [];
  const [x, y] = placeOf(layout, moment);
  const end: Point = [
    Math.max(box.left, Math.min(x, box.right)),
    Math.max(box.top, Math.min(y, box.bottom)),
  ];
  return Math.hypot(end[0] - x, end[1] - y) < layout.textPx * 0.9 ? [] : [[x, y], end];
}

/** What no name may cover: the lines of both plans, the band, the leading lines and what stands already. */
function taken(layout: CookTimeLayout, late: readonly LateLabel[]): readonly Box[] {
  const { course, state, bottom, textPx, x } = layout;
  const along = (points: readonly { minutes: number; temperatureC: number }[]) =>
    lineBoxes(
      points.map((point) => placeOf(layout, point)),
      3,
    );
  const [stopX, stopY] = placeOf(layout, course.stop);
  return [
    ...along(course.heat),
    ...along(course.cooling),
    ...along(state.other?.path ?? []),
    ...lineBoxes(
      [
        [stopX, stopY],
        [stopX, bottom],
      ],
      3,
    ),
    {
      left: x.at(state.bandMinutes[0]),
      right: x.at(state.bandMinutes[1]),
      top: bottom - textPx * 0.7,
      bottom,
    },
    ...late.flatMap(({ from, at, text }) => [
      labelBox({ lines: [text], sizePx: textPx, anchor: 'start' }, at),
      ...lineBoxes([from, leadEnd(at, textPx)], 2),
    ]),
  ];
}

/** Where a leading line meets its name. */
export function leadEnd([x, y]: Point, textPx: number): Point {
  return [x - textPx * 0.35, y - textPx * 0.35];
}
