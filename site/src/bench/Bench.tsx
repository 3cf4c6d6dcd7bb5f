import type { ComponentChildren, JSX } from 'preact';
import { useCallback, useEffect, useMemo, useRef, useState } from 'preact/hooks';
import type { BatchDocument } from 'vitrose';
import { benchWords } from '../words/bench.js';
import { emptyTable, startWith } from './state/arrive.js';
import { clearTable } from './state/edits.js';
import { redo, undo } from './state/history.js';
import { fileNameOf } from './state/program.js';
import type { Manner } from './state/read/types.js';
import { kitchenOf } from './state/recipe.js';
import { stopWords } from './state/stop-words.js';
import type { BenchState } from './state/types.js';
import { Answer } from './view/answer.js';
import type { BenchProps } from './view/bench-context.js';
import { saveText } from './view/devices.js';
import { Formula } from './view/formula.js';
import { Gate } from './view/gate.js';
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
import { useNear } from './view/use-near.js';
import { usePlans } from './view/use-plans.js';
import { useSettled } from './view/use-settled.js';
import { useStorage } from './view/use-storage.js';
import { useTurns } from './view/use-turns.js';
import { useWarmUp } from './view/use-warm-up.js';

/** A new stop is said once the typing has paused. */
const SAY_AFTER_MS = 700;

/** How the page speaks when it comes from the server. */
const FIRST_MANNER: Manner = { units: 'metric', region: 'world' };

/** The bench: one batch, planned again at every keystroke. */
export function Bench(props: {
  readonly start: BatchDocument;
  /** Its plan and that in words, as JSON: the server has worked it out once for everybody. */
  readonly started: string;
  /** What is under the answer as the server drew it, until something is changed. */
  readonly rule?: ComponentChildren;
  readonly boil?: ComponentChildren;
  readonly panels?: ComponentChildren;
  readonly lists?: ComponentChildren;
  readonly doors?: ComponentChildren;
  readonly card?: ComponentChildren;
}): JSX.Element {
  const { start } = props;
  const [state, setState] = useState<BenchState>(() => startWith(start, FIRST_MANNER, 'nobodys'));
  const latest = useRef(state);
  const edit = useCallback((change: (before: BenchState) => BenchState) => {
    latest.current = change(latest.current);
    setState(latest.current);
  }, []);
  const [spoken, say] = useState('');
  const draws = useRef(0);
  draws.current += 1;
  const { batch } = state.now;
  const { manner } = state;
  const isTouched = useRef(false);
  isTouched.current ||= batch !== start || manner !== FIRST_MANNER;
  const { turns, root, give, areOver } = useTurns();
  const later = useLater(areOver || isTouched.current);
  const { started, planned, described, count } = usePlans(
    start,
    props.started,
    state,
    isTouched.current,
    later,
  );
  const bench: BenchProps = useMemo(
    () => ({ state, batch, planned, described, edit, say, turns }),
    [state, batch, planned, described, edit, turns],
  );
  const settled = useSettled(bench, isTouched.current);
  const figures = useFigures(settled, later);
  const [isNear, panelsBox] = useNear();
  const [beside, lay] = useState('');
  useWarmUp(root, start, started.plan, later);
  useArrival(start, edit, give);
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
  const isAlive = areOver && later !== undefined;
  const isSettled = later !== undefined && settled !== undefined;
  const gate = (draw: () => JSX.Element, ...of: readonly unknown[]): JSX.Element => (
    <Gate turns={turns} of={[bench, ...of]} draw={draw} />
  );

  return (
    <div
      class="bench"
      ref={root}
      data-alive={isAlive}
      data-plans={count}
      data-draws={draws.current}
    >
      <div class="head">
        <h1>{benchWords.title}</h1>
        {gate(() => (
          <NameBox {...bench} />
        ))}
      </div>
      {/* It speaks of everything on the page, so it waits until everything is what it says. */}
      {isAlive && <later.ArrivalNote {...bench} />}
      {gate(() => (
        <Answer {...bench} />
      ))}
      {gate(
        () => (
          <Tools
            {...bench}
            onUndo={onUndo}
            onRedo={onRedo}
            onEmpty={onEmpty}
            onSave={onSave}
            onFile={onFile}
            keys={later !== undefined && <later.Keys />}
          />
        ),
        later,
      )}
      {gate(() => (
        <Formula {...bench} />
      ))}
      {gate(() => (
        <Target {...bench} />
      ))}
      {gate(() => (
        <KitchenPart {...bench} />
      ))}
      <aside class={planned.isOld ? 'side old' : 'side'} aria-labelledby="rule-title">
        <div class="stays">
          <h2 id="rule-title" class="only-read-aloud">
            {benchWords.rule.title}
          </h2>
          {isSettled ? (
            <Memo key="rule" of={[figures]} draw={() => <later.Rule figures={figures} />} />
          ) : (
            props.rule
          )}
        </div>
      </aside>
      {gate(() => (
        <Things {...bench} />
      ))}
      {isSettled ? (
        <Memo key="boil" of={[figures]} draw={() => <later.Boil figures={figures} />} />
      ) : (
        props.boil
      )}
      <div class="panels" ref={panelsBox}>
        {later !== undefined && (isNear || isSettled) ? (
          <Memo
            key="panels"
            of={[settled, described, beside]}
            draw={() => <later.Panels {...(settled ?? bench)} beside={beside} lay={lay} />}
          />
        ) : (
          props.panels
        )}
      </div>
      {isSettled ? (
        <Memo key="lists" of={[settled]} draw={() => <later.Lists {...settled} lay={lay} />} />
      ) : (
        props.lists
      )}
      {later === undefined ? (
        props.doors
      ) : (
        <Memo key="doors" of={[batch]} draw={() => <later.Doors {...bench} />} />
      )}
      {isSettled ? (
        <Memo key="card" of={[settled]} draw={() => <later.Card {...settled} />} />
      ) : (
        props.card
      )}
      {gate(() => (
        <MannerChoice {...bench} />
      ))}
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
