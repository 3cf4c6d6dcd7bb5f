import type { Span } from '../../../foundation/results/types.js';
import type { StageId } from '../../../models/stages/types.js';
import type { Aim } from '../../batch/types.js';
import type { Figure } from './figure.js';

/** Where to stop. */
export type PlannedTarget = {
  readonly asked: 'stage' | 'sea-level' | 'moisture' | 'glass-transition';
  readonly stage?: StageId | undefined;
  readonly aim?: Aim | undefined;
  /** For this mixture at sea level. */
  readonly seaLevelC: Figure;
  /** For this mixture at the pressure in this pan. */
  readonly hereC: Figure;
  /** On this thermometer: the large number. */
  readonly readingC: Figure;
  /** Readings at which the sweet is still good, rounded inwards to whole degrees where that leaves room. */
  readonly windowReadingC: Span;
  /** The same window before rounding. */
  readonly exactWindowReadingC: Span;
  /** What ends the window at either side. */
  readonly windowEnds: readonly [low: WindowEnd, high: WindowEnd];
  /** From sea level to here. */
  readonly shiftK: Figure;
  /** How the reading was made from the true temperature. */
  readonly correction: 'none' | 'shift' | 'scale';
  /** The stage or gap the stop lies in; nothing where stage names do not apply. */
  readonly stageAtStop?:
    | { readonly kind: 'too-thin' | 'stage' | 'between' | 'dry' | 'burnt'; readonly id: string }
    | undefined;
  /** Stage names mean something for this mixture. */
  readonly stageNamesApply: boolean;
  /** Hotter against drier against harder, where a glass point was asked for or the mass is a polyol's. */
  readonly curve?: readonly CurvePoint[] | undefined;
  /** From here on ten degrees more buy less than 2 K of glass transition. */
  readonly kneeReadingC?: number | undefined;
};

/** What ends the window of good readings. */
export type WindowEnd = 'water' | 'glass' | 'sugar-limit' | 'knee' | 'stage';

/** A stop and what it leaves. */
export type CurvePoint = {
  readonly hereC: number;
  readonly readingC: number;
  readonly moistureMassFraction: number;
  readonly glassTransitionC: number;
};
