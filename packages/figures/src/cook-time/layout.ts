import { BOTTOM_AXIS_LINES } from '../axes/bottom-axis.js';
import { textWidthPx } from '../labels/text-width.js';
import { inUnits, temperature } from '../ladder/temperature-words.js';
import { type LinearScale, linearScale } from '../scale/linear.js';
import { niceTicks } from '../scale/nice-ticks.js';
import type { Point } from '../scale/path.js';
import { type CookCourse, cookCourse } from './course.js';
import type { CookMoment, CookPoint, CookTimeState } from './state.js';
import { COOK_MOMENT_LABELS } from './words.js';

/** Where everything on the time line of a cook stands, px. */
export type CookTimeLayout = {
  readonly state: CookTimeState;
  readonly course: CookCourse;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Size of the letters; large enough to be read from the back of a room on a wide drawing. */
  readonly textPx: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Where the names of what comes from the stop on begin. */
  readonly namesLeft: number;
  readonly x: LinearScale;
  /** On the reader's scale. */
  readonly y: LinearScale;
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
};

/** Works the time line of a cook out. */
export function cookTimeLayout(state: CookTimeState): CookTimeLayout {
  const widthPx = Math.max(320, state.widthPx ?? 320);
  const heightPx = Math.max(320, state.heightPx ?? Math.min(640, 280 + 0.28 * widthPx));
  const textPx = Math.round(Math.min(28, Math.max(13, widthPx * 0.022)));
  const { units = 'c', bandMinutes, other } = state;
  const course = cookCourse(state);
  const [left, right] = [textPx * 2.6, widthPx - textPx];
  // Names from the stop on begin above the line they belong to; the key of another plan above those.
  const [top, bottom] = [
    textPx * (other === undefined ? 3.4 : 4.6),
    heightPx - textPx * BOTTOM_AXIS_LINES,
  ];
  const widest = Math.max(
    0,
    ...course.late.map((one) => textWidthPx(lateText(one, state), textPx)),
  );
  const namesLeft = right + textPx * 0.8 - widest;
  const drawn = [...course.heat, ...course.cooling, ...course.moments, ...(other?.path ?? [])];
  const lastMin = Math.max(1, ...drawn.map(({ minutes }) => minutes));
  const xMax = Math.max(lastMin, bandMinutes[1]);
  // Lines end before the names; the band of the stop lies under them and may go on.
  const pxPerMin = Math.min((namesLeft - 1.4 * textPx - left) / lastMin, (right - left) / xMax);
  const temperatures = drawn.map(({ temperatureC }) => temperatureC);
  const coldestC = Math.min(...temperatures, 100);
  const hottestC = Math.max(...temperatures, coldestC + 10);
  const [low, high] = [inUnits(coldestC, units), inUnits(hottestC, units)];
  const shownMin = (right - left) / pxPerMin;
  return {
    state,
    course,
    widthPx,
    heightPx,
    textPx,
    left,
    right,
    top,
    bottom,
    namesLeft,
    x: linearScale([0, shownMin], [left, right]),
    y: linearScale([low, high], [bottom, top]),
    xTicks: niceTicks(0, shownMin, Math.max(3, Math.floor((right - left) / (textPx * 2.6)))),
    yTicks: niceTicks(low, high, Math.max(3, Math.floor((bottom - top) / (textPx * 2)))),
  };
}

/** Where a point of the cook stands. */
export function placeOf({ x, y, state }: CookTimeLayout, point: CookPoint): Point {
  return [x.at(point.minutes), y.at(inUnits(point.temperatureC, state.units ?? 'c'))];
}

/** Its name; and for the first and the last of them what the thermometer shows. */
export function lateText(
  { id, temperatureC }: CookMoment,
  { units = 'c' }: Pick<CookTimeState, 'units'>,
): string {
  const name = COOK_MOMENT_LABELS[id];
  return id === 'stop' || id === 'pour' ? `${name} ${temperature(temperatureC, units)}` : name;
}
