import type { Span } from '../../../foundation/results/types.js';
import type { GrainingWord } from '../../../models/graining/index.js';
import type { Figure } from './figure.js';

/** Whether it stays hard. */
export type PlannedKeeping = {
  /** Stays hard up to about here. */
  readonly glassTransitionC: Figure;
  readonly storeC: number;
  readonly storeRelativeHumidity?: number | undefined;
  readonly forDays: number;
  readonly marginK: Figure;
  /** What air it bears; nothing where nobody has measured it. */
  readonly air?: PlannedAir | undefined;
  readonly wrap: PlannedWrap;
};

/** The humidity a bare sweet lives with, at the temperature of the store, 0–1. */
export type PlannedAir = {
  /** Drier air dries it, wetter air wets it. */
  readonly ownRelativeHumidity: Figure;
  /** From here on it takes up water until it is soft. */
  readonly criticalRelativeHumidity: Figure;
  /** Its surface begins to stick. */
  readonly sticksFromRelativeHumidity?: number | undefined;
  /** It is sticky all over. */
  readonly stickyAtRelativeHumidity?: number | undefined;
};

/** How long the wrap holds. */
export type PlannedWrap =
  | {
      readonly kind: 'days';
      /** By the line through start and limit. */
      readonly days: Figure;
      /** Step by step along the whole curve. */
      readonly fullDays: number;
    }
  | {
      readonly kind: 'none';
      readonly reason:
        | 'open'
        | 'not-given'
        | 'humidity-not-given'
        | 'piece-not-given'
        | 'dry-enough'
        | 'no-estimate'
        | 'already-soft';
    };

/** One of the three places it can grain. */
export type GrainingAnswer = {
  readonly word: GrainingWord;
  /** 50 is: expected just when it is no longer wanted. */
  readonly score: number;
  readonly days: Figure;
};

/** Whether it grains: in the pan, wrapped, and bare in the room. */
export type PlannedGraining =
  | {
      readonly kind: 'graining';
      /** The worst of those that apply. */
      readonly worst: 'process' | 'wrapped' | 'open';
      readonly word: GrainingWord;
      readonly process: GrainingAnswer;
      readonly wrapped: GrainingAnswer;
      /** At the humidity of the room; only where it is given. */
      readonly open?: GrainingAnswer | undefined;
      readonly supersaturation: number;
      /** Solids that are not sucrose, of all solids. */
      readonly doctorMassFraction: number;
    }
  | {
      readonly kind: 'none';
      readonly reason: 'no-sucrose' | 'no-kinetic-data' | 'not-supersaturated';
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
  /** Minutes from the end of the rest until the mass no longer pours. */
  readonly potLifeMin?: Figure | undefined;
  /** Fillings of the mould that fit into that. */
  readonly poursInTime?: number | undefined;
};

/** What is done to a mass of this stiffness. */
export type WindowId =
  | 'deposit'
  | 'pour-by-hand'
  | 'fold'
  | 'pull'
  | 'stamp'
  | 'stick'
  | 'demould'
  | 'wrap';

/** A working window: temperatures of the mass, open at an end that has none. */
export type PlannedWindow = {
  readonly id: WindowId;
  readonly lowC?: number | undefined;
  readonly highC?: number | undefined;
};
