import { BOTTOM_AXIS_LINES } from '../axes/bottom-axis.js';
import { textWidthPx } from '../labels/text-width.js';
import { inUnits, temperature } from '../ladder/temperature-words.js';
import { type LinearScale, linearScale } from '../scale/linear.js';
import { niceTicks } from '../scale/nice-ticks.js';
import type { Bar } from './bar-path.js';
import { windowLanes } from './lanes.js';
import { shownMarks, shownSpanC } from './marks.js';
import type { TemperatureAxisState, WorkingWindow, WorkingWindowId } from './state.js';
import { MARK_LABELS, windowName } from './words.js';

/** A window and the bar it is drawn as. */
export type PlacedWindow = { readonly window: WorkingWindow; readonly bar: Bar };

/** Where everything on a temperature axis stands, px. */
export type TemperatureAxisLayout = {
  readonly state: TemperatureAxisState;
  readonly lies: boolean;
  readonly widthPx: number;
  readonly heightPx: number;
  /** Size of the letters; large enough to be read from the back of a room on a wide drawing. */
  readonly textPx: number;
  /** The bars stand within these. */
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Along the axis, on the reader's scale. */
  readonly along: LinearScale;
  readonly ticks: readonly number[];
  readonly windows: readonly PlacedWindow[];
};

/** Corners harden with the mass. */
const CORNERS: Readonly<Record<WorkingWindowId, number>> = {
  deposit: 12,
  'pour-by-hand': 12,
  fold: 9,
  pull: 7,
  stamp: 3,
  stick: 3,
  demould: 0,
  wrap: 0,
};

/** A lying axis has a row for each window, and its name before it. */
const ROW = 1.6;
const LIES_FROM_PX = 640;

/** Works a temperature axis out. */
export function temperatureAxisLayout(state: TemperatureAxisState): TemperatureAxisLayout {
  const widthPx = Math.max(320, state.widthPx ?? 320);
  const lies = state.wide === true && widthPx >= LIES_FROM_PX;
  const textPx = Math.round(Math.min(28, Math.max(13, widthPx * 0.022)));
  const frame = lies ? lyingFrame(state, widthPx, textPx) : standingFrame(state, widthPx, textPx);
  const { left, right, top, bottom } = frame;
  const { units = 'c' } = state;
  const [coldestC, hottestC] = shownSpanC(state);
  const [low, high] = [inUnits(coldestC, units), inUnits(hottestC, units)];
  const along = linearScale([low, high], lies ? [left, right] : [bottom, top]);
  const steps = lies ? (right - left) / (textPx * 3.2) : (bottom - top) / (textPx * 2.4);
  const bare = { ...frame, state, lies, widthPx, textPx, along };
  return {
    ...bare,
    ticks: niceTicks(low, high, Math.max(3, Math.floor(steps))),
    windows: placedWindows(bare),
  };
}

type Frame = Pick<TemperatureAxisLayout, 'left' | 'right' | 'top' | 'bottom' | 'heightPx'>;

/** The names of the marks stand to the right of the bars. */
function standingFrame(state: TemperatureAxisState, widthPx: number, textPx: number): Frame {
  const heightPx = Math.max(440, state.heightPx ?? Math.min(900, 420 + 0.375 * widthPx));
  const widest = Math.max(
    ...shownMarks(state).flatMap(({ id, temperatureC }) => [
      textWidthPx(MARK_LABELS[id], textPx),
      textWidthPx(temperature(temperatureC, state.units ?? 'c'), textPx),
    ]),
  );
  return {
    left: textPx * 2.6,
    right: widthPx - widest - textPx * 1.5,
    top: textPx * 1.9,
    bottom: heightPx - textPx * 0.8,
    heightPx,
  };
}

/** The names of the marks stand above the bars, in two lines. */
function lyingFrame(state: TemperatureAxisState, widthPx: number, textPx: number): Frame {
  const names = state.windows.map(({ id }) => textWidthPx(windowName(id), textPx));
  const top = textPx * 3.8;
  const rows = Math.max(3, state.windows.length) * ROW * textPx;
  const heightPx = Math.max(state.heightPx ?? 0, top + rows + textPx * (0.6 + BOTTOM_AXIS_LINES));
  return {
    left: Math.max(0, ...names) + textPx * 1.2,
    right: widthPx - textPx,
    top,
    bottom: heightPx - textPx * BOTTOM_AXIS_LINES,
    heightPx,
  };
}

function placedWindows(
  layout: Omit<TemperatureAxisLayout, 'ticks' | 'windows'>,
): readonly PlacedWindow[] {
  const { state, lies, left, right, top, bottom, textPx, widthPx } = layout;
  const lanes = lies ? state.windows.map((_, at) => at) : windowLanes(state.windows);
  const count = Math.max(1, ...lanes.map((lane) => lane + 1));
  const [begin, end] = lies ? [top + textPx * 0.3, bottom - textPx * 0.3] : [left, right];
  const pitch = (end - begin) / count;
  const gap = lies ? pitch * 0.2 : Math.min(textPx * 0.6, pitch * 0.15);
  return state.windows.map((window, at) => {
    const near = begin + (lanes[at] ?? 0) * pitch + gap / (lies ? 2 : 1);
    const { lowC, highC } = window;
    const cold = lowC === undefined ? (lies ? left : bottom) : placeOf(layout, lowC);
    const hot = highC === undefined ? (lies ? right : top) : placeOf(layout, highC);
    const [openCold, openHot] = [lowC === undefined, highC === undefined];
    return {
      window,
      bar: {
        near,
        far: near + pitch - gap,
        from: Math.min(cold, hot),
        to: Math.max(cold, hot),
        openFrom: lies ? openCold : openHot,
        openTo: lies ? openHot : openCold,
        radius: CORNERS[window.id] * Math.max(1, widthPx / 900),
        lies,
      },
    };
  });
}

/** Where a temperature stands along the axis, px. */
export function placeOf(
  { along, state }: Pick<TemperatureAxisLayout, 'along' | 'state'>,
  temperatureC: number,
): number {
  return along.at(inUnits(temperatureC, state.units ?? 'c'));
}
