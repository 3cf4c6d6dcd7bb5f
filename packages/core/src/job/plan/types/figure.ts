import type { Span } from '../../../foundation/results/types.js';
import type { Grade } from '../../../foundation/validity/constants.js';
import type { SourceId } from '../../../sources/ids.js';
import type { PlanModelId } from '../models.js';

/** One number of a plan. Its unit is in the key it stands under. */
export type Figure = {
  readonly value: number;
  /** Within this about nine times in ten, if the inputs are right; same unit. */
  readonly band: Span;
  /** Key into `plan.models`. */
  readonly model: PlanModelId;
};

/** What a model of the plan is, for the reader who opens a number. */
export type PlanModel = {
  readonly equation: string;
  readonly sources: readonly SourceId[];
  readonly grade: Grade;
};
