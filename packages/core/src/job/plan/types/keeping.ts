import type { Span } from '../../../foundation/results/types.js';
import type { Figure } from './figure.js';

/** Whether it stays hard. */
export type PlannedKeeping = {
  /** Stays hard up to about here. */
  readonly glassTransitionC: Figure;
  readonly storeC: number;
  readonly storeRelativeHumidity?: number | undefined;
  readonly forDays: number;
  readonly marginK: Figure;
};

/** How the mass meets the mould. */
export type PlannedPour = {
  /** The hottest mass that may go into this mould. */
  readonly mouldMaxC?: number | undefined;
  /** Rest until the mass has fallen to this before flavour. */
  readonly flavourBelowC: number;
  /** Acid goes in between these. */
  readonly acidBetweenC: Span;
  readonly pourBetweenC: Span;
};
