import type { ComponentChildren, JSX } from 'preact';
import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { BatchDocument } from 'vitrose';
import type { DescribedPlan } from 'vitrose/words';
import { benchWords } from '../words/bench.js';
import { emptyTable, startWith } from './state/arrive.js';
import { clearTable } from './state/edits.js';
import { redo, undo } from './state/history.js';
import { createPlanner } from './state/planner.js';
import { fileNameOf } from './state/program.js';
import { kitchenOf } from './state/recipe.js';
import { stopWords } from './state/stop-words.js';
import type { BenchState } from './state/types.js';
import { Answer } from './view/answer.js';
import type { BenchProps } from './view/bench-context.js';
import { saveText } from './view/devices.js';
import { Formula } from './view/formula.js';
import { KitchenPart } from './view/kitchen.js';
import { Memo } from './view/memo.js';
import { NameBox } from './view/name-box.js';
import { Target } from './view/target.js';
import { Things } from './view/things.js';
import { MannerChoice, Tools } from './view/tools.js';
import { useArrival } from './view/use-arrival.js';
import { useFigures } from './view/use-figures.js';
import { useKeys } from './view/use-keys.js';
import { useLater } from './view/use-later.js';
import { useManner } from './view/use-manner.js';
import { useStorage } from './view/use-storage.js';

/** A new stop is said once the typing has paused. */
const SAY_AFTER_MS = 700;

/** The bench: one batch, planned again at every keystroke. */
export function Bench(props: {
  readonly start: BatchDocument;
  /** Its plan in words, as the server wrote it: the page shows it until it can write its own. */
  readonly startDescribed: DescribedPlan;
  /** The lower parts as the server drew them, until their code has come. */
  readonly rule?: ComponentChildren;
  readonly boil?: ComponentChildren;
  readonly rest?: ComponentChildren;
}): JSX.Element {
  const { start, startDescribed } = props;
  const [state, setState] = useState<BenchState>(() =>
    startWith(start, { units: 'metric', region: 'world' }, 'nobodys'),
  );
  const latest = useRef(state);
  const edit = useCallback((change: (before: BenchState) => BenchState) => {
    latest.current = change(latest.current);
    setState(latest.current);
  }, []);
  const [spoken, say] = useState('');
  const planner = useRef(createPlanner());
  const draws = useRef(0);
  draws.current += 1;
  const { batch } = state.now;
  const { manner } = state;
  const later = useLater();
  const planned = planner.current.plan(batch);
  const { plan, isOld } = planned;
  const described = useMemo(() => {
    if (later === undefined) return startDescribed;
    return plan === undefined ? undefined : later.describePlan(plan, manner);
  }, [later, startDescribed, plan, manner]);
  // Whoever types before the words have come sees the worked example, in grey.
  const isBehind = later === undefined && batch !== start;
  const figures = useFigures(batch, plan, isOld, manner.units);
  useArrival(start, edit);
  useStorage(state, start);
  useStopSaid(described === undefined ? undefined : stopText(described), say);
  useManner(manner, edit);

  const step = (change: typeof undo, words: string): void => {
    if (change(latest.current) === latest.current) return;
    edit(change);
    say(words);
  };
  const onUndo = (): void => step(undo, benchWords.undone);
  const onRedo = (): void => step(redo, benchWords.redone);
  const onSave = (): void => {
    const { batch: saved } = latest.current.now;
    void import('vitrose/documents').then(({ batchText }) =>
      saveText(fileNameOf(saved), batchText(saved)),
    );
  };
  useKeys({ onUndo, onRedo, onSave });
  const onEmpty = (): void => {
    const { whose } = state.now;
    edit((before) =>
      clearTable(before, emptyTable(whose === 'mine' ? kitchenOf(batch) : undefined)),
    );
    document.getElementById('new-ingredient')?.focus();
  };
  const onFile = (file: File): void => {
    void file.text().then(async (text) => {
      const { openText } = await import('./view/arrivals.js');
      await openText(text, 'file', edit);
    });
  };
  const shown = isBehind ? { ...planned, isOld: true } : planned;
  const bench: BenchProps = { state, batch, planned: shown, described, edit, say };

  return (
    <div class="bench" data-plans={planner.current.count()} data-draws={draws.current}>
      <div class="head">
        <h1>{benchWords.title}</h1>
        <NameBox {...bench} />
      </div>
      {later !== undefined && <later.ArrivalNote {...bench} />}
      <Answer {...bench} />
      <Tools
        {...bench}
        onUndo={onUndo}
        onRedo={onRedo}
        onEmpty={onEmpty}
        onSave={onSave}
        onFile={onFile}
        keys={later !== undefined && <later.Keys />}
      />
      <Formula {...bench} />
      <Target {...bench} />
      <KitchenPart {...bench} />
      <aside class={isOld ? 'side old' : 'side'} aria-labelledby="rule-title">
        <div class="stays">
          <h2 id="rule-title" class="only-read-aloud">
            {benchWords.rule.title}
          </h2>
          {later === undefined ? (
            props.rule
          ) : (
            <Memo of={figures} draw={() => <later.Rule figures={figures} />} />
          )}
        </div>
      </aside>
      <Things {...bench} />
      {later === undefined ? (
        props.boil
      ) : (
        <Memo of={figures} draw={() => <later.Boil figures={figures} />} />
      )}
      {later === undefined ? props.rest : <later.Rest {...bench} />}
      <MannerChoice {...bench} />
      <p role="status" class="only-read-aloud" id="live">
        {spoken}
      </p>
    </div>
  );
}

function stopText(described: NonNullable<BenchProps['described']>): string | undefined {
  const stop = stopWords(described);
  return stop === undefined
    ? described.answer.find(({ id }) => id === 'stop')?.text
    : benchWords.answer.live(`${stop.reading} ${stop.unit}`, stop.low, stop.high);
}

/** Says a new stop to a reader who listens, not each one on the way to it. */
function useStopSaid(text: string | undefined, say: (text: string) => void): void {
  const said = useRef(text);
  useEffect(() => {
    if (text === undefined || text === said.current) return undefined;
    const timer = setTimeout(() => {
      said.current = text;
      say(text);
    }, SAY_AFTER_MS);
    return () => clearTimeout(timer);
  }, [text, say]);
}
