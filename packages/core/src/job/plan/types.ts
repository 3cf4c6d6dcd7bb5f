import type { ModelWarning } from '../../foundation/results/types.js';
import type { Advice } from '../advice/types.js';
import type { PlanModelId } from './models.js';
import type { PlannedCooking, PlannedInversion } from './types/cooking.js';
import type { PlanModel } from './types/figure.js';
import type {
  PlannedGraining,
  PlannedKeeping,
  PlannedPour,
  PlannedWindow,
} from './types/keeping.js';
import type { PlannedKitchen } from './types/kitchen.js';
import type {
  PlannedComposition,
  PlannedLateWater,
  PlannedLine,
  PlannedPan,
  PlannedYield,
} from './types/mass.js';
import type { PlannedCaution, PlannedStep, TakenDefault } from './types/steps.js';
import type { PlannedTarget } from './types/target.js';
import type { PlannedLabel, PlannedPolyols, PlannedTaste } from './types/taste.js';

export type {
  MomentId,
  PathPoint,
  PlannedCooking,
  PlannedInversion,
  PlannedMoment,
} from './types/cooking.js';
export type { Figure, PlanModel } from './types/figure.js';
export type {
  GrainingAnswer,
  PlannedAir,
  PlannedGraining,
  PlannedKeeping,
  PlannedPour,
  PlannedWindow,
  PlannedWrap,
  WindowId,
} from './types/keeping.js';
export type { PlannedKitchen } from './types/kitchen.js';
export type {
  PlannedComposition,
  PlannedLateWater,
  PlannedLine,
  PlannedPan,
  PlannedYield,
} from './types/mass.js';
export type {
  CautionId,
  Moment,
  PlannedCaution,
  PlannedStep,
  StepId,
  TakenDefault,
} from './types/steps.js';
export type { CurvePoint, PlannedTarget, WindowEnd } from './types/target.js';
export type { PlannedLabel, PlannedPolyols, PlannedTaste } from './types/taste.js';

/** What `planBatch` answers: `vitrose.plan/1`. No clock in it: the same batch gives the same plan. */
export type PlanDocument = {
  readonly format: 'vitrose.plan/1';
  readonly name?: string | undefined;
  readonly kitchen: PlannedKitchen;
  readonly target: PlannedTarget;
  readonly formula: readonly PlannedLine[];
  readonly composition: PlannedComposition;
  readonly pan: PlannedPan;
  readonly yield: PlannedYield;
  readonly lateWater: PlannedLateWater;
  /** Absent where this hob never gets there: the advice says so. */
  readonly cooking?: PlannedCooking | undefined;
  /** Absent where no sucrose is in the pan. */
  readonly inversion?: PlannedInversion | undefined;
  readonly keeping: PlannedKeeping;
  readonly graining: PlannedGraining;
  /** What can be done to the mass at which temperature, hottest first. */
  readonly windows: readonly PlannedWindow[];
  readonly pour: PlannedPour;
  readonly taste: PlannedTaste;
  readonly polyols?: PlannedPolyols | undefined;
  readonly label: PlannedLabel;
  readonly steps: readonly PlannedStep[];
  readonly cautions: readonly PlannedCaution[];
  readonly advice: readonly Advice[];
  readonly warnings: readonly ModelWarning[];
  readonly defaults: readonly TakenDefault[];
  readonly models: Readonly<Partial<Record<PlanModelId, PlanModel>>>;
};
