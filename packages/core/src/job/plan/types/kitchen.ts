import type { Figure } from './figure.js';

/** The air at the pan and how it is known. */
export type PlannedKitchen = {
  readonly from:
    | 'elevation'
    | 'barometer'
    | 'weather-service'
    | 'trusted-thermometer'
    | 'boiling-water-reading'
    | 'sea-level';
  readonly pressurePa: Figure;
  readonly waterBoilsAtC: Figure;
  /** What the gauge takes off, and what is left. */
  readonly vacuum?:
    | { readonly underVacuumPa: number; readonly pressureInPanPa: Figure }
    | undefined;
  /** This thermometer in boiling water, less the true temperature: thermometer and weather together. */
  readonly readingDifferenceK?: Figure | undefined;
  /** The difference is the thermometer's own, because a second one vouches for the water. */
  readonly differenceIsTheThermometers: boolean;
  /** How far the stop would move if the reading were all thermometer instead of all air. */
  readonly causeMattersK?: number | undefined;
};
