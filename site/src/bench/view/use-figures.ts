import { useRef } from 'preact/hooks';
import type { BenchProps } from './bench-context.js';
import type { FigureState } from './figure-state.js';
import { isSame } from './memo.js';
import type { Later } from './use-later.js';

/** The state of the drawings for the plan on the bench, or the last one that was not old. */
export function useFigures(
  bench: BenchProps | undefined,
  later: Later | undefined,
): FigureState | undefined {
  const drawn = useRef<{ readonly of: readonly unknown[]; readonly figures: FigureState }>();
  if (bench === undefined || later === undefined) return undefined;
  const { batch, planned, state } = bench;
  const { plan, isOld } = planned;
  const { units } = state.manner;
  if (plan !== undefined && !isOld && !isSame(drawn.current?.of ?? [], [plan, units])) {
    drawn.current = { of: [plan, units], figures: later.figureState(batch, plan, units) };
  }
  return drawn.current?.figures;
}
