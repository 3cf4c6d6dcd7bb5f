import type { Checked, None, Span } from '../../foundation/results/types.js';
import type { PowerStep } from './flame.js';
import type { HeatSource } from './hob-power.js';
import type { PanLossOptions } from './pan-loss.js';

/** Where a boil ends: at a temperature, or at so much dry solids. */
export type BoilDownTarget =
  | { /** °C, under the pressure at the pan. */ readonly targetC: number }
  | { /** 0 to 1. */ readonly targetDrySolidsMassFraction: number };

/** How a mass is boiled down. */
export type BoilDownOptions = BoilDownTarget &
  PanLossOptions & {
    readonly hob: HeatSource;
    /** Absolute pressure at the pan, Pa; sea level if left out. */
    readonly pressurePa?: number | undefined;
    /** Mass at the start, °C; 20 if left out. */
    readonly startC?: number | undefined;
    /** No crystals are left to dissolve: a mass that was boiling before. */
    readonly dissolved?: boolean | undefined;
    /** Empty steel pan, g; nothing if left out. */
    readonly panMassG?: number | undefined;
    /** A lower flame from a temperature on. */
    readonly powerSteps?: readonly PowerStep[] | undefined;
  };

/** One moment of a boil. */
export type BoilDownPoint = {
  readonly timeS: number;
  readonly temperatureC: number;
  readonly drySolidsMassFraction: number;
  readonly waterG: number;
  /** How fast the mass gets hotter from here on, K a minute. */
  readonly rateKPerMin: number;
};

/** Where the heat of a boil goes, kJ. */
export type BoilDownHeat = {
  /** The mass, from the start to the first boil. */
  readonly warming: number;
  /** Crystals into solution. */
  readonly dissolving: number;
  /** Steam. */
  readonly evaporation: number;
  /** The mass, from the first boil to the end. */
  readonly concentrating: number;
  /** The pan. */
  readonly pan: number;
  /** All of these. */
  readonly total: number;
  /** To the air, on top of the total. */
  readonly lost: number;
};

/** What `boilDown` answers. */
export type BoilDown = Checked<{
  /** From the start over the first boil to the end, in order of time. */
  path: readonly BoilDownPoint[];
  firstBoilC: number;
  firstBoilS: number;
  endC: number;
  /** From the start to the end. */
  minutes: number;
  /** Of `minutes`. */
  band: Span;
  evaporatedG: number;
  waterLeftG: number;
  /** Into the pan at full power, W. */
  powerW: number;
  heatKJ: BoilDownHeat;
  rateAtEndKPerMin: number;
}>;

/**
 * Why a boil has no end: the hob does not bring the mass to its first boil; it does, but not to the
 * target; the mass is there before it boils; or nothing is dissolved, and water boils at one
 * temperature until it is gone.
 */
export type NoBoilDown = None<
  'never-boils' | 'never-reaches' | 'already-past' | 'nothing-dissolved'
>;
