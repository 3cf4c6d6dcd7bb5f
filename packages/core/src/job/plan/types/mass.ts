import type { When } from '../../batch/types.js';
import type { Figure } from './figure.js';

/** A line of the formula in grams. */
export type PlannedLine = {
  /** JSON Pointer into the batch document. */
  readonly path: string;
  readonly ingredient: string;
  readonly massG: Figure;
  readonly waterG: number;
  readonly drySolidsG: number;
  readonly when: When;
  /** The form a spoon measure was taken in. */
  readonly form?: string | undefined;
  readonly asWritten?: string | undefined;
};

/** What the mass is made of, from cold pan to finished sweet. */
export type PlannedComposition = {
  readonly chargeG: Figure;
  readonly startDrySolidsMassFraction: Figure;
  readonly firstBoilC: Figure;
  readonly boilOffG: Figure;
  /** At the stop, before anything late goes in. */
  readonly baseG: Figure;
  readonly baseDrySolidsMassFraction: Figure;
  readonly baseMoistureMassFraction: Figure;
  /** Of the finished sweet with all late water kept, the wet bound; the band reaches down to none kept. */
  readonly moistureMassFraction: Figure;
  /** Shares of the dry solids, largest first: species ids and, for starch syrups, `syrup-solids`. */
  readonly drySolidsShares: Readonly<Record<string, number>>;
};

/** The pan before and at the stop. */
export type PlannedPan = {
  /** Contents only. */
  readonly weighsAtStopG: Figure;
  /** With pan, spoon and probe. */
  readonly grossAtStopG?: Figure | undefined;
  readonly chargeMl: Figure;
  readonly filledFraction?: Figure | undefined;
  readonly depthAtStopMm?: Figure | undefined;
};

/** What comes out. */
export type PlannedYield = {
  /** Finished mass in the pan: the base and everything late, before losses. */
  readonly finishedG: Figure;
  /** Left on pan and tools. */
  readonly leftBehindG: Figure;
  readonly breakFraction: number;
  /** In whole pieces, after losses and breakage. */
  readonly piecesG: Figure;
  readonly pieceG?: Figure | undefined;
  readonly cavityMl?: number | undefined;
  readonly pieces?: Figure | undefined;
  readonly wishedPieces?: number | undefined;
  /** How often the cook fills the mould, or all the moulds there are. */
  readonly pours?:
    | { readonly full: number; readonly rest: number; readonly cavities: number }
    | undefined;
};

/** Water that comes with what goes in off the heat. */
export type PlannedLateWater = {
  readonly massG: number;
  readonly moistureRisePoints: Figure;
};
