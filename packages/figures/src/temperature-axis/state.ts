import type { Units } from '../ladder/temperature-words.js';

/** What is done to a mass of this stiffness. */
export type WorkingWindowId =
  | 'deposit'
  | 'pour-by-hand'
  | 'fold'
  | 'pull'
  | 'stamp'
  | 'stick'
  | 'demould'
  | 'wrap';

/** A working window: temperatures of the mass, °C; open at an end that is left out. */
export type WorkingWindow = {
  readonly id: WorkingWindowId;
  readonly lowC?: number | undefined;
  readonly highC?: number | undefined;
};

/** Everything the temperature axis is drawn from. */
export type TemperatureAxisState = {
  /** Begins every id in the drawing; unique on the page. */
  readonly id: string;
  /** Hottest first; each at most once. */
  readonly windows: readonly WorkingWindow[];
  /** Where the boil is stopped. */
  readonly stopC: number;
  /** Where the finished sweet turns from glass to syrup, and within which it lies nine times in ten. */
  readonly glassC: number;
  readonly glassBandC: readonly [low: number, high: number];
  /** The room the sweet is made in. */
  readonly roomC: number;
  /** Where it is kept. */
  readonly storeC?: number | undefined;
  /** The hottest mass the mould bears; not drawn where the mass never gets so hot. */
  readonly mouldMaxC?: number | undefined;
  /** °C if left out. */
  readonly units?: Units | undefined;
  /** Lies instead of standing, from 640 px on. */
  readonly wide?: boolean | undefined;
  /** Px; 320 if left out, and never less. */
  readonly widthPx?: number | undefined;
  /** Px; from the width and the windows if left out. */
  readonly heightPx?: number | undefined;
  /** The drawing alone. */
  readonly compact?: boolean | undefined;
};
