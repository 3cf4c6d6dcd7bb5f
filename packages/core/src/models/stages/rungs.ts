// biome-ignore-all format: one rung a line, to be held against the charts

import type { StageGapId, StageId } from './types.js';

/** A rung with its sea-level ends as charts print them, °F. */
export type Rung = { readonly lowF: number; readonly highF: number } & (
  | { readonly kind: 'stage'; readonly id: StageId }
  | { readonly kind: 'gap'; readonly id: StageGapId }
);

/**
 * Stages and gaps from thin to burnt: sea level, mostly sucrose. Ends are the values of a
 * home-economics handbook, which the medians of seven charts equal; the charts share one ancestry,
 * so their agreement is not accuracy. 240–244, 248–250, 266–270 and 290–300 °F belong to no stage
 * in any chart. Source `stage-chart-medians`, derived; dry sugar `mcgee-2004`, secondary.
 */
export const STAGE_RUNGS = [
  { kind: 'stage', id: 'thread', lowF: 230, highF: 234 },
  { kind: 'stage', id: 'soft-ball', lowF: 234, highF: 240 },
  { kind: 'gap', id: 'between-soft-ball-and-firm-ball', lowF: 240, highF: 244 },
  { kind: 'stage', id: 'firm-ball', lowF: 244, highF: 248 },
  { kind: 'gap', id: 'between-firm-ball-and-hard-ball', lowF: 248, highF: 250 },
  { kind: 'stage', id: 'hard-ball', lowF: 250, highF: 266 },
  { kind: 'gap', id: 'between-hard-ball-and-soft-crack', lowF: 266, highF: 270 },
  { kind: 'stage', id: 'soft-crack', lowF: 270, highF: 290 },
  { kind: 'gap', id: 'between-soft-crack-and-hard-crack', lowF: 290, highF: 300 },
  { kind: 'stage', id: 'hard-crack', lowF: 300, highF: 310 },
  { kind: 'gap', id: 'between-hard-crack-and-clear-liquid', lowF: 310, highF: 320 },
  { kind: 'stage', id: 'clear-liquid', lowF: 320, highF: 335 },
  { kind: 'gap', id: 'between-clear-liquid-and-brown-liquid', lowF: 335, highF: 338 },
  { kind: 'stage', id: 'brown-liquid', lowF: 338, highF: 350 },
] as const satisfies readonly Rung[];

/**
 * From here on hardly any water is left to boil: sugar melts and browns by temperature and time, and
 * the air pressure no longer counts.
 */
export const DRY_SUGAR_FROM_F = 320;
