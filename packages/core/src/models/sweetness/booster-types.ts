import type { None, Span } from '../../foundation/results/types.js';
import type { IntenseSweetener } from './intense-parameters.js';
import type { SWEETNESS } from './parameters.js';
import type { TastingOptions } from './tasting.js';

/** What a sweet can be made sweeter with. */
export type BoosterSweetener = IntenseSweetener | keyof typeof SWEETNESS;

/** How much of a sweetener brings a sweet to a sweetness. */
export type Booster = {
  /** All of it, of the finished sweet with its water, 0–1. */
  readonly massFraction: number;
  /** What has to go in beside this mixture, g. */
  readonly massG: number;
  /** `massFraction` as the rest, and its strength in the mouth, may be; 1 where no amount does. */
  readonly band: Span;
  /** Of an intense sweetener: the dose is right within this factor, on top of the band. */
  readonly rightWithin?: number | undefined;
  /** What the European Union is recalled to allow without added sugar, of the finished sweet. */
  readonly legalCapMassFraction?: number | undefined;
  /** Whether that is passed; left out where no cap is known here. */
  readonly aboveLegalCap?: boolean | undefined;
  /** The mass must be no hotter when it goes in, °C. */
  readonly heatLimitC?: number | undefined;
  /** Slow to come and slow to go: not to be offered alone up to the sweetness of sugar. */
  readonly lingersAlone: boolean;
};

/** Two sweeteners that share the work. */
export type BoosterPair = { readonly acesulfameK: Booster; readonly aspartame: Booster };

/** Why there is no amount. */
export type NoBooster = None<'already-as-sweet' | 'weaker-than-target' | 'ceiling' | 'too-hot'>;

/** What a booster is asked for. */
export type BoosterOptions = TastingOptions & {
  /** Sucrose = 1. */
  readonly targetRelativeSweetness: number;
  /** How hot the mass is when it goes in, °C. */
  readonly addedAtC?: number | undefined;
};

/** From hardly sweet to the sweetest sugar there is, and half as much again. */
export const TARGET_SWEETNESS_DOMAIN: Span = [0.01, 3];
/** Of the mass when a sweetener goes in, °C. */
export const ADDED_AT_DOMAIN_C: Span = [-20, 250];
