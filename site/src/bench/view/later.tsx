import type { JSX } from 'preact';
import type { BenchProps } from './bench-context.js';
import { Code } from './code.js';
import { Known } from './known.js';
import type { Lay } from './panels/props.js';
import { Share } from './share.js';
import { Steps } from './steps.js';

export { planBatch } from 'vitrose';
export { describePlan } from 'vitrose/words';
export { createPlanner } from '../state/planner.js';
export { ArrivalNote } from './arrival-note.js';
export { Boil } from './boil.js';
export { Card } from './card.js';
export { figureState } from './figure-state.js';
export { Keys } from './keys.js';
export { Panels } from './panels/panels.js';
export { Rule } from './rule.js';

/** What to do and what was taken for granted. */
export function Lists(props: BenchProps & { readonly lay: Lay }): JSX.Element {
  return (
    <>
      <Steps {...props} />
      <Known {...props} />
    </>
  );
}

/** The ways out of the page: into a program, to another reader. */
export function Doors(props: BenchProps): JSX.Element {
  return (
    <>
      <Code {...props} />
      <Share {...props} />
    </>
  );
}
