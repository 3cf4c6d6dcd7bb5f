import { type KitchenLadder, kitchenLadder } from '../ladder/kitchen-ladder.js';
import { pressureOf } from '../ladder/read-kitchen.js';
import { inUnits } from '../ladder/temperature-words.js';
import { type LinearScale, linearScale } from '../scale/linear.js';
import { niceTicks } from '../scale/nice-ticks.js';
import { boilingCurve, type CurvePoint, type Mark, markOf } from './curve.js';
import type { BoilingCurveState } from './state.js';

/** Where everything on a boiling curve stands, px. */
export type CurveLayout = {
  readonly state: BoilingCurveState;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Size of the letters; large enough to be read from the back of a room on a wide drawing. */
  readonly textPx: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  readonly points: readonly CurvePoint[];
  readonly ladder: KitchenLadder;
  readonly mark: Mark | undefined;
  /** Water in 100 g, from wet at the left to dry at the right. */
  readonly x: LinearScale;
  /** On the reader's scale. */
  readonly y: LinearScale;
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
};

/** Works a boiling curve out. */
export function curveLayout(state: BoilingCurveState): CurveLayout {
  const widthPx = Math.max(320, state.widthPx ?? 320);
  const heightPx = Math.max(280, state.heightPx ?? Math.min(640, 220 + 0.33 * widthPx));
  const textPx = Math.round(Math.min(28, Math.max(14, widthPx * 0.022)));
  const { units = 'c' } = state;
  const ladder = kitchenLadder(pressureOf(state), state.mixture);
  const mark = markOf(state);
  const points = boilingCurve(state, mark);
  const wettestG = points[0]?.waterG ?? 30;
  const coldestC = Math.min(points[0]?.lowC ?? 100, mark?.temperatureC ?? 200);
  const hottestC = Math.max(points.at(-1)?.highC ?? 165, (mark?.temperatureC ?? 0) + 6);
  const [left, right] = [textPx * 2.6, widthPx - textPx];
  const [top, bottom] = [textPx * 1.9, heightPx - textPx * 3.2];
  const [low, high] = [inUnits(coldestC, units), inUnits(hottestC, units)];
  return {
    state,
    widthPx,
    heightPx,
    textPx,
    left,
    right,
    top,
    bottom,
    points,
    ladder,
    mark,
    x: linearScale([Math.max(wettestG, mark?.waterG ?? 0), 0], [left, right]),
    y: linearScale([low, high], [bottom, top]),
    xTicks: niceTicks(0, wettestG, Math.max(3, Math.floor((right - left) / (textPx * 5)))),
    yTicks: niceTicks(low, high, Math.max(3, Math.floor((bottom - top) / (textPx * 2.4)))),
  };
}

/** The height of a temperature, px. */
export function yOf({ y, state }: CurveLayout, temperatureC: number): number {
  return y.at(inUnits(temperatureC, state.units ?? 'c'));
}
