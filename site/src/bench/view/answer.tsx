import type { ComponentChildren, JSX } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { AnswerLine } from 'vitrose/words';
import { benchWords } from '../../words/bench.js';
import { tidy } from '../state/read/tidy.js';
import { type StopWords, stopWords } from '../state/stop-words.js';
import type { BenchProps } from './bench-context.js';
import { useDifference } from './use-difference.js';
import { WatchLine } from './watch-line.js';
import { Ways } from './ways.js';

const LINES = ['stop', 'weighs', 'makes', 'keeps'] as const;

/** The five lines, each opening to what it rests on. */
export function Answer(props: BenchProps): JSX.Element {
  const { described, planned, state } = props;
  const words = benchWords.answer;
  const isOld = planned.isOld || Object.keys(state.unread).length > 0;
  return (
    <section class={isOld ? 'answer old' : 'answer'} aria-labelledby="answer-title">
      <h2 id="answer-title" class="only-read-aloud">
        {words.title}
      </h2>
      <Trouble {...props} isOld={isOld} />
      {described === undefined || planned.plan === undefined ? (
        <p class="nothing">{words.nothingYet}</p>
      ) : (
        <div class="five">
          <StopLine {...props} words={stopWords(described)} />
          {LINES.slice(1).map((id) => (
            <Line key={id} id={id} label={words[id]} {...props}>
              {textOf(described.answer, id)}
            </Line>
          ))}
          <WatchLine {...props} />
        </div>
      )}
    </section>
  );
}

function StopLine(props: BenchProps & { readonly words: StopWords | undefined }): JSX.Element {
  const { words: stop, described } = props;
  const words = benchWords.answer;
  const shown = stop === undefined ? undefined : Number(stop.reading.replace('−', '-'));
  const difference = useDifference(shown, stop?.unit ?? '');
  if (stop === undefined) {
    return (
      <Line id="stop" label={words.stop} {...props}>
        {textOf(described?.answer ?? [], 'stop')}
      </Line>
    );
  }
  return (
    <Line id="stop" label={words.stop} {...props}>
      <span class="large">
        <output id="stop-reading">{stop.reading}</output>
        <span class="degree">{stop.unit}</span>
        <span class="difference" aria-hidden="true">
          {difference === undefined
            ? ''
            : `${difference > 0 ? '+' : '−'}${tidy(Math.abs(difference))}`}
        </span>
      </span>
      <span class="window">
        {words.onYours}{' '}
        <b>
          {stop.low} {words.and} {stop.high}
        </b>{' '}
        <span class="quiet other">{stop.other}</span>
      </span>
      {stop.more !== '' && <span class="rests">{stop.more}</span>}
    </Line>
  );
}

/** A line with what opens from it. */
function Line(
  props: BenchProps & {
    readonly id: (typeof LINES)[number];
    readonly label: string;
    readonly children: ComponentChildren;
  },
): JSX.Element {
  const { id, label, planned, state, described } = props;
  const { plan } = planned;
  const lines = described?.sections.find((section) => section.id === SECTION_OF[id])?.lines ?? [];
  const [rows, setRows] = useState<typeof import('./figure-row.js') | undefined>(undefined);
  const box = useRef<HTMLDetailsElement>(null);
  const fetchRows = (): void => {
    if (box.current?.open === true && rows === undefined) {
      void import('./figure-row.js').then(setRows);
    }
  };
  // It may have been opened before it came alive.
  useEffect(fetchRows, []);
  return (
    <details ref={box} class={`answer-line answer-${id}`} id={`answer-${id}`} onToggle={fetchRows}>
      <summary>
        <span class="label">{label}</span>
        <span class="said">{props.children}</span>
      </summary>
      <div class="behind">
        {lines.map((line) => (
          <p key={line}>{line}</p>
        ))}
        {plan !== undefined && rows !== undefined && (
          <rows.FigureRows plan={plan} lineId={id} manner={state.manner} />
        )}
      </div>
    </details>
  );
}

const SECTION_OF = {
  stop: 'kitchen',
  weighs: 'composition',
  makes: 'yield',
  keeps: 'keeping',
} as const;

function textOf(answer: readonly AnswerLine[], id: AnswerLine['id']): string {
  const text = answer.find((line) => line.id === id)?.text ?? '';
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** Why the plan is still the one before. */
function Trouble(props: BenchProps & { readonly isOld: boolean }): JSX.Element | null {
  const { state, planned, isOld } = props;
  const words = benchWords.answer;
  if (!isOld) return null;
  const reasons = Object.values(state.unread).map(({ reason }) => reason);
  return (
    <div class="trouble">
      {planned.plan !== undefined && <p>{words.old}</p>}
      {reasons.map((reason) => (
        <p key={reason}>{reason}</p>
      ))}
      <Ways {...props} />
    </div>
  );
}
