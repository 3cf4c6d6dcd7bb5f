import type { BatchDocument } from 'vitrose';
import type { DescribedPlan } from 'vitrose/words';
import type { Planned } from '../state/planner.js';
import type { BenchState } from '../state/types.js';
import type { Turns } from './turns.js';

/** What every part of the bench is given: what stands on it, and the one way to change it. */
export type BenchProps = {
  readonly state: BenchState;
  readonly batch: BatchDocument;
  readonly planned: Planned;
  readonly described: DescribedPlan | undefined;
  readonly edit: (change: (state: BenchState) => BenchState) => void;
  /** Says something to a reader who listens. */
  readonly say: (text: string) => void;
  /** In which the parts come alive. */
  readonly turns: Turns;
};
