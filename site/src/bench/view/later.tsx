import type { JSX } from 'preact';
import type { BenchProps } from './bench-context.js';
import { Card } from './card.js';
import { Code } from './code.js';
import { Known } from './known.js';
import { Share } from './share.js';
import { Steps } from './steps.js';

export { describePlan } from 'vitrose/words';
export { ArrivalNote } from './arrival-note.js';
export { Boil } from './boil.js';
export { Keys } from './keys.js';
export { Rule } from './rule.js';

/** Everything under the drawing of the boil: it may come a moment after the answer. */
export function Rest(props: BenchProps): JSX.Element {
  return (
    <>
      <Steps {...props} />
      <Known {...props} />
      <Code {...props} />
      <Share {...props} />
      <Card {...props} />
    </>
  );
}
