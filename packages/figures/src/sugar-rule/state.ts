import type { Mixture, Span } from 'vitrose';
import type { Place } from '../ladder/read-kitchen.js';
import type { Units } from '../ladder/temperature-words.js';

/** Everything the sugar rule is drawn from. */
export type SugarRuleState = Place & {
  /** Begins every id in the drawing; unique on the page. */
  readonly id: string;
  /** Where to stop in this kitchen, true °C; no line is drawn without it. */
  readonly stopHereC?: number | undefined;
  /** Stops that are still good, true °C. */
  readonly windowHereC?: Span | undefined;
  /** What is in the pan; sucrose and water if left out. */
  readonly mixture?: Mixture | undefined;
  /** What the thermometer shows above the true temperature, K. The degrees are those it shows. */
  readonly readingOffsetK?: number | undefined;
  /** °C if left out. */
  readonly units?: Units | undefined;
  /** Px; 320 if left out, and never less. */
  readonly widthPx?: number | undefined;
  /** Of the drawing, px; 680 if left out, and never less than 480. */
  readonly heightPx?: number | undefined;
  /** The drawing alone: no question above it, nothing under it. */
  readonly compact?: boolean | undefined;
};
