import { BOTTOM_AXIS_LINES } from '../axes/bottom-axis.js';
import { textWidthPx } from '../labels/text-width.js';
import { type LinearScale, linearScale } from '../scale/linear.js';
import { type KeepingRow, keepingRows } from './rows.js';
import type { KeepingBarsState } from './state.js';
import { humidity } from './words.js';

/** A row with its words and its bar, px. */
export type PlacedRow = KeepingRow & {
  readonly textX: number;
  readonly textRight: number;
  readonly baseline: number;
  readonly barTop: number;
  readonly barBottom: number;
};

/** The room on the axis, with its words above the rows. */
export type PlacedRoom = {
  readonly x: number;
  readonly text: string;
  /** The middle of its words. */
  readonly textX: number;
};

/** Where everything on the keeping bars stands, px. */
export type KeepingBarsLayout = {
  readonly state: KeepingBarsState;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly textPx: number;
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
  /** Of a humidity of 0 to 1. */
  readonly x: LinearScale;
  readonly rows: readonly PlacedRow[];
  readonly room: PlacedRoom | undefined;
};

/** Of a row, in sizes of the letters: its words, then its bar. */
const ROW = { words: 1.5, bar: 1.1, gap: 0.7 };

/** Works the keeping bars out. */
export function keepingBarsLayout(state: KeepingBarsState): KeepingBarsLayout {
  const widthPx = Math.max(320, state.widthPx ?? 320);
  const textPx = Math.round(Math.min(28, Math.max(13, widthPx * 0.022)));
  const [left, right] = [textPx, widthPx - textPx * 1.3];
  const x = linearScale([0, 1], [left, right]);
  const top = textPx * 2.1;
  const found = keepingRows(state);
  const pitch = (ROW.words + ROW.bar + ROW.gap) * textPx;
  const bottom = top + Math.max(1, found.length) * pitch;
  const rows = found.map((row, at): PlacedRow => {
    const width = textWidthPx(row.text, textPx);
    const begins = row.id === 'water' ? left : x.at(row.stretches[0]?.from ?? 0);
    const textX = Math.max(left, Math.min(begins, right - width));
    const barTop = top + at * pitch + ROW.words * textPx;
    return {
      ...row,
      textX,
      textRight: textX + width,
      baseline: barTop - textPx * 0.45,
      barTop,
      barBottom: barTop + ROW.bar * textPx,
    };
  });
  return {
    state,
    widthPx,
    heightPx: bottom + textPx * BOTTOM_AXIS_LINES,
    textPx,
    left,
    right,
    top,
    bottom,
    x,
    rows,
    room: placedRoom(state, x, textPx, widthPx),
  };
}

function placedRoom(
  { relativeHumidity }: KeepingBarsState,
  x: LinearScale,
  textPx: number,
  widthPx: number,
): PlacedRoom | undefined {
  if (relativeHumidity === undefined) return undefined;
  const text = `your room ${humidity(relativeHumidity)}`;
  const half = textWidthPx(text, textPx) / 2 + 2;
  const at = x.at(relativeHumidity);
  return { x: at, text, textX: Math.max(half, Math.min(at, widthPx - half)) };
}
