import type { Mixture } from 'vitrose';
import type { Place } from '../ladder/read-kitchen.js';
import type { Units } from '../ladder/temperature-words.js';

/** Everything the boiling curve is drawn from. */
export type BoilingCurveState = Place & {
  /** Begins every id in the drawing; unique on the page. */
  readonly id: string;
  /** What is boiled; sucrose and water if left out. */
  readonly mixture?: Mixture | undefined;
  /** Where the batch is stopped, true °C. */
  readonly markC?: number | undefined;
  /** What to call the mark, such as the name of the batch. */
  readonly markName?: string | undefined;
  /** What runs to the right: the solids, or the water that is left. */
  readonly across?: 'water-left' | 'solids' | undefined;
  /** °C if left out. */
  readonly units?: Units | undefined;
  /** Px; 320 if left out, and never less. */
  readonly widthPx?: number | undefined;
  /** Px; from the width if left out. */
  readonly heightPx?: number | undefined;
  /** The drawing alone. */
  readonly compact?: boolean | undefined;
};
