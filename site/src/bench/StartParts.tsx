import type { JSX } from 'preact';
import { type BatchDocument, planBatch } from 'vitrose';
import { describePlan } from 'vitrose/words';
import { startWith } from './state/arrive.js';
import type { BenchProps } from './view/bench-context.js';
import { figureState } from './view/figure-state.js';
import { Boil, Card, Doors, Lists, Panels, Rule } from './view/later.js';
import { createTurns } from './view/turns.js';

/** The lower parts of the page as the server draws them, for the worked example. */
export function StartPart(props: {
  readonly start: BatchDocument;
  readonly part: 'rule' | 'boil' | 'panels' | 'lists' | 'doors' | 'card';
}): JSX.Element {
  const { start, part } = props;
  const result = planBatch(start);
  if (result.kind === 'refused') throw new Error(JSON.stringify(result.problems));
  const { plan } = result;
  const figures = figureState(start, plan, 'metric');
  if (part === 'rule') return <Rule figures={figures} />;
  if (part === 'boil') return <Boil figures={figures} />;
  const state = startWith(start, { units: 'metric', region: 'world' }, 'nobodys');
  const bench: BenchProps = {
    state,
    batch: start,
    planned: { plan, isOld: false, problems: [] },
    described: describePlan(plan, state.manner),
    edit: () => undefined,
    say: () => undefined,
    turns: createTurns(true),
  };
  const lay = (): void => undefined;
  if (part === 'panels') return <Panels {...bench} beside="" lay={lay} />;
  if (part === 'lists') return <Lists {...bench} lay={lay} />;
  return part === 'card' ? <Card {...bench} /> : <Doors {...bench} />;
}
