import type { ModelWarning } from '../../foundation/results/types.js';
import type { Advice } from '../advice/types.js';
import type { PlanModelId } from './models.js';
import type { PlanModel } from './types/figure.js';
import type { PlannedKeeping, PlannedPour } from './types/keeping.js';
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
import type { PlannedPolyols, PlannedTaste } from './types/taste.js';

export type { Figure, PlanModel } from './types/figure.js';
export type { PlannedKeeping, PlannedPour } from './types/keeping.js';
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
export type { PlannedPolyols, PlannedTaste } from './types/taste.js';

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
  readonly keeping: PlannedKeeping;
  readonly pour: PlannedPour;
  readonly taste: PlannedTaste;
  readonly polyols?: PlannedPolyols | undefined;
  readonly steps: readonly PlannedStep[];
  readonly cautions: readonly PlannedCaution[];
  readonly advice: readonly Advice[];
  readonly warnings: readonly ModelWarning[];
  readonly defaults: readonly TakenDefault[];
  readonly models: Readonly<Partial<Record<PlanModelId, PlanModel>>>;
};
