import type { Span } from '../../foundation/results/types.js';

/** A sugar stage, language-free. */
export type StageId =
  | 'thread'
  | 'soft-ball'
  | 'firm-ball'
  | 'hard-ball'
  | 'soft-crack'
  | 'hard-crack'
  | 'clear-liquid'
  | 'brown-liquid';

/** What lies between two stages and belongs to neither. */
export type StageGapId =
  | 'between-soft-ball-and-firm-ball'
  | 'between-firm-ball-and-hard-ball'
  | 'between-hard-ball-and-soft-crack'
  | 'between-soft-crack-and-hard-crack'
  | 'between-hard-crack-and-clear-liquid'
  | 'between-clear-liquid-and-brown-liquid';

/** Where in the range of a stage. */
export type StageAim = 'low' | 'middle' | 'high';

/** One rung of the ladder: a stage, or the gap above it. */
export type StageRange = (
  | { readonly kind: 'stage'; readonly id: StageId }
  | { readonly kind: 'gap'; readonly id: StageGapId }
) & {
  /** In this kitchen, °C. */
  readonly lowC: number;
  readonly highC: number;
  /** At sea level, °C. */
  readonly lowSeaLevelC: number;
  readonly highSeaLevelC: number;
  /** Solids of a sucrose syrup at the two ends, 0 to 1; `null` where no boil tells them. */
  readonly drySolidsMassFraction: Span | null;
};
