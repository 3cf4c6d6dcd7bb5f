import { useMemo } from 'preact/hooks';
import { planBatch } from 'vitrose';
import { type Beside, besides } from '../../state/beside.js';
import type { BenchState } from '../../state/types.js';

/** What can be laid beside the plan, what is, and its plan: nobody plans what nobody looks at. */
export type LaidBeside = {
  readonly offered: readonly Beside[];
  readonly other: Beside | undefined;
  readonly result: ReturnType<typeof planBatch> | undefined;
};

export function useBeside(state: BenchState, chosen: string): LaidBeside {
  const { now, past } = state;
  const offered = useMemo(() => besides({ now, past }), [now, past]);
  const other = offered.find(({ id }) => id === chosen);
  const result = useMemo(
    () => (other === undefined ? undefined : planBatch(other.batch)),
    [other?.batch],
  );
  return { offered, other, result };
}
