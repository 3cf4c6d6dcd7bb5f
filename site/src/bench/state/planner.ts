import { type BatchDocument, type PlanDocument, type Problem, planBatch } from 'vitrose';

/** What stands on the page for a batch. */
export type Planned = {
  /** The plan of this batch, or the last one that came out. */
  readonly plan: PlanDocument | undefined;
  /** The plan is not this batch's: it is shown in grey, with the reason. */
  readonly isOld: boolean;
  /** What stands in the way. */
  readonly problems: readonly Problem[];
};

/** Plans batches, each document once. */
export type Planner = {
  readonly plan: (batch: BatchDocument) => Planned;
  /** How many plans were computed so far. */
  readonly count: () => number;
};

/**
 * A planner that remembers the last plan that came out.
 *
 * A batch is known by its identity, not by its content: every edit makes a new document, and
 * drawing the page twice costs nothing.
 *
 * @param start - A batch whose plan is known already, as the server made it.
 */
export function createPlanner(
  compute: typeof planBatch = planBatch,
  start?: { readonly batch: BatchDocument; readonly planned: Planned },
): Planner {
  const known = new WeakMap<BatchDocument, Planned>();
  let lastGood = start?.planned.plan;
  if (start !== undefined) known.set(start.batch, start.planned);
  let computed = 0;
  return {
    plan: (batch) => {
      const before = known.get(batch);
      if (before !== undefined) {
        if (!before.isOld) lastGood = before.plan;
        return before;
      }
      computed += 1;
      const result = compute(batch);
      if (result.kind === 'plan') lastGood = result.plan;
      const planned: Planned =
        result.kind === 'plan'
          ? { plan: result.plan, isOld: false, problems: [] }
          : { plan: lastGood, isOld: true, problems: result.problems };
      known.set(batch, planned);
      return planned;
    },
    count: () => computed,
  };
}
