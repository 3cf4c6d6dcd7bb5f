import type { Span } from '../../../foundation/results/types.js';
import type { Figure } from './figure.js';

/** A point of the boil: on the clock, on this thermometer, and in the pan. */
export type PathPoint = {
  readonly minutes: number;
  /** True temperature of the mass. */
  readonly hereC: number;
  readonly readingC: number;
  readonly drySolidsMassFraction: number;
};

/** What the hand does at a moment of the cook, in the order it can come. */
export type MomentId =
  | 'first-boil'
  | 'turn-down'
  | 'stop'
  | 'rest'
  | 'colour-and-flavour'
  | 'acid'
  | 'pour';

/** A moment of the cook: minutes from the cold pan, and what the thermometer shows then. */
export type PlannedMoment = {
  readonly id: MomentId;
  readonly atMin: Figure;
  readonly hereC: number;
  readonly readingC: number;
};

/** The boil against the clock, on this hob. */
export type PlannedCooking = {
  readonly hob: 'gas' | 'resistance' | 'induction' | 'timed';
  /** Nobody said which hob: a usual kettle test stands in. */
  readonly hobIsAssumed: boolean;
  /** What reaches the mass of what the hob burns. */
  readonly powerIntoPanW: Figure;
  readonly firstBoilMin: Figure;
  /** From the cold pan to the stop, the flame turned down at the end where that is told. */
  readonly toStopMin: Figure;
  /** How fast it climbs at the stop, at this flame throughout. */
  readonly rateAtStopKPerMin: Figure;
  /** Share of the flame that climbs slowly enough at the stop to be caught; 1 where all of it does. */
  readonly turnDownToFraction: number;
  /** Degrees this thermometer is behind at the stop, at this flame throughout; only where its speed is given. */
  readonly lagK?: Figure | undefined;
  /** The same once the flame is turned down. */
  readonly lagTurnedDownK?: number | undefined;
  /** What the base of the pan still gives after the flame is out; only where its weight is given. */
  readonly carryOverK?: Figure | undefined;
  /** In order. */
  readonly moments: readonly PlannedMoment[];
  /** From the cold pan to the stop. */
  readonly path: readonly PathPoint[];
  /**
   * Minutes at 150 °C that would weigh as much on the colour. It means something only beside the
   * same number of another plan.
   */
  readonly thermalLoadMin: Figure;
};

/** What acid and heat do to the sugar: none of it where no sucrose is in the pan. */
export type PlannedInversion = {
  /** pH of the water at the first boil, early acid in it. */
  readonly pH: Figure;
  /** Of the sucrose, by the stop: what acid did is counted in every other number, what the syrup's own pH did is not. */
  readonly earlyFraction: Figure;
  /** Of what is left, between the acid and the mould; the band reaches from a third of the estimate up to the law as it stands. */
  readonly lateFraction: Figure;
  /** What early acid took of the glass point: as dry without it, the sweet stays hard this much warmer. */
  readonly earlyCostsK: number;
  /** What late inversion will take of the glass point once the sweet takes back the water it used. */
  readonly lateCostsK: number;
  /** There was no more water for it to go further. */
  readonly limitedByWater: boolean;
  /** How sour the finished sweet is, as citric acid. */
  readonly sournessMassFraction?: Figure | undefined;
  /** pH of the water in the finished sweet. */
  readonly finishedPH?: Figure | undefined;
  /** Sodium citrate, as sold, that would bring that to 3.0, and what would then invert late. */
  readonly buffer?:
    | { readonly sodiumCitrateG: number; readonly lateFraction: number; readonly band: Span }
    | undefined;
};
