import { useMemo, useRef } from 'preact/hooks';
import type { BatchDocument, PlanDocument } from 'vitrose';
import type { DescribedPlan } from 'vitrose/words';
import type { Planned, Planner } from '../state/planner.js';
import type { BenchState } from '../state/types.js';
import type { Later } from './use-later.js';

/** The plan of the worked example and that in words: the server has worked it out for everybody. */
export type Started = { readonly plan: PlanDocument; readonly described: DescribedPlan };

/**
 * What stands on the page for a batch, and how many plans it took.
 *
 * Nothing is planned for the example as it came. Whoever types before planning has been fetched sees
 * the example, in grey.
 *
 * @param startedText - As JSON, which is read faster than the same as a script.
 */
export function usePlans(
  start: BatchDocument,
  startedText: string,
  state: BenchState,
  isTouched: boolean,
  later: Later | undefined,
): {
  readonly started: Started;
  readonly planned: Planned;
  readonly described: DescribedPlan | undefined;
  readonly count: number;
} {
  const { batch } = state.now;
  const started = useMemo(() => JSON.parse(startedText) as Started, [startedText]);
  const [first, behind] = useMemo<readonly [Planned, Planned]>(() => {
    const { plan } = started;
    return [
      { plan, isOld: false, problems: [] },
      { plan, isOld: true, problems: [] },
    ];
  }, [started]);
  const planner = useRef<Planner>();
  planner.current ??= later?.createPlanner(undefined, { batch: start, planned: first });
  const planned = planner.current?.plan(batch) ?? (batch === start ? first : behind);
  const { plan } = planned;
  const { manner } = state;
  const described = useMemo(() => {
    if (later === undefined || !isTouched) return started.described;
    return plan === undefined ? undefined : later.describePlan(plan, manner);
  }, [later, isTouched, started, plan, manner]);
  return { started, planned, described, count: planner.current?.count() ?? 0 };
}
