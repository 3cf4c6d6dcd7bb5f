import type { Units } from '../ladder/temperature-words.js';

/** A point of the cook: on the clock from the cold pan, and in the mass, °C. */
export type CookPoint = { readonly minutes: number; readonly temperatureC: number };

/** What the hand does at a moment of the cook. */
export type CookMomentId =
  | 'first-boil'
  | 'turn-down'
  | 'stop'
  | 'rest'
  | 'colour-and-flavour'
  | 'acid'
  | 'pour';

/** A moment of the cook. */
export type CookMoment = CookPoint & { readonly id: CookMomentId };

/** Everything the time line of a cook is drawn from. */
export type CookTimeState = {
  /** Begins every id in the drawing; unique on the page. */
  readonly id: string;
  /** From the cold pan to the stop, two points or more, in the order of the clock. */
  readonly path: readonly CookPoint[];
  /** In the order of the clock; each at most once. */
  readonly moments: readonly CookMoment[];
  /** The earliest and the latest minute of the stop. */
  readonly bandMinutes: readonly [low: number, high: number];
  /** Another plan, from the cold pan to its stop, and what to call it. */
  readonly other?: { readonly label: string; readonly path: readonly CookPoint[] } | undefined;
  /** °C if left out. */
  readonly units?: Units | undefined;
  /** Px; 320 if left out, and never less. */
  readonly widthPx?: number | undefined;
  /** Px; from the width if left out. */
  readonly heightPx?: number | undefined;
  /** The drawing alone. */
  readonly compact?: boolean | undefined;
};
