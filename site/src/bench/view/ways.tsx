import type { JSX } from 'preact';
import { useEffect, useState } from 'preact/hooks';
import type { BenchProps } from './bench-context.js';
import { Buttons } from './watch-line.js';

type Explain = typeof import('vitrose/words').explainProblem;

/** What stands in the way of a plan, and the ways out. */
export function Ways(props: BenchProps): JSX.Element {
  const { planned, state } = props;
  const explain = useExplain(planned.problems.length > 0);
  return (
    <>
      {planned.problems.map((problem) => (
        <div key={problem.code + problem.path}>
          <p>{explain?.(problem, state.manner).text}</p>
          <Buttons {...props} remedies={problem.remedies ?? []} />
        </div>
      ))}
    </>
  );
}

/** The sentences about problems come when there is one: most tables never have any. */
function useExplain(isWanted: boolean): Explain | undefined {
  const [held, setHeld] = useState<{ readonly explain: Explain } | undefined>(undefined);
  useEffect(() => {
    if (!isWanted || held !== undefined) return;
    void import('../state/explain.js').then(({ explainProblem }) =>
      setHeld({ explain: explainProblem }),
    );
  }, [isWanted, held]);
  return held?.explain;
}
