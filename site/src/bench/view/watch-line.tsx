import type { JSX } from 'preact';
import type { Advice, Remedy, Severity } from 'vitrose';
import { explainAdvice, remedyLabel } from 'vitrose/words';
import { benchWords } from '../../words/bench.js';
import { takeRemedy } from '../state/edits.js';
import type { BenchProps } from './bench-context.js';

const ORDER: readonly Severity[] = ['danger', 'will-fail', 'may-disappoint', 'note'];

/** Every advice, the gravest first. */
export function adviceInOrder(advice: readonly Advice[]): readonly Advice[] {
  return ORDER.flatMap((severity) => advice.filter((one) => one.severity === severity));
}

/** The one thing most likely to go wrong, with its button; the others open from it. */
export function WatchLine(props: BenchProps): JSX.Element {
  const { planned, described } = props;
  const words = benchWords.answer;
  const [first, ...others] = adviceInOrder(planned.plan?.advice ?? []);
  const plain = described?.answer.find(({ id }) => id === 'watch')?.text ?? '';
  return (
    <div class="answer-line answer-watch" id="answer-watch" tabIndex={-1}>
      <p class="watch">
        <span class="label">{words.watch}</span>
        {first === undefined && (
          <span class="said">{plain.charAt(0).toUpperCase() + plain.slice(1)}</span>
        )}
      </p>
      {first !== undefined && <AdviceText {...props} advice={first} />}
      {others.length > 0 && (
        <details id="more-advice">
          <summary>{benchWords.advice.more(others.length)}</summary>
          {others.map((advice) => (
            <AdviceText {...props} key={advice.code + (advice.path ?? '')} advice={advice} />
          ))}
        </details>
      )}
    </div>
  );
}

/** One advice in words, with its buttons. */
export function AdviceText(
  props: BenchProps & { readonly advice: Advice; readonly then?: string },
): JSX.Element {
  const { advice, state } = props;
  const { severity, title, text } = explainAdvice(advice, state.manner);
  const isGrave = advice.severity === 'danger' || advice.severity === 'will-fail';
  return (
    <div class={`advice advice-${advice.severity}`}>
      <p>
        {isGrave && <Barred />}
        <b>
          {severity}: {title}.
        </b>{' '}
        {text}
      </p>
      <Buttons {...props} remedies={advice.remedies} />
    </div>
  );
}

/** The ways out, each a button. */
export function Buttons(
  props: BenchProps & {
    readonly remedies: readonly Remedy[];
    /** Where to be once one is taken. */
    readonly then?: string;
  },
): JSX.Element | null {
  const { remedies, edit, say, state, then = 'answer-watch' } = props;
  const doable = remedies.filter(({ changes }) => changes.length > 0);
  if (doable.length === 0) return null;
  return (
    <p class="ways">
      {doable.map((remedy) => {
        const label = remedyLabel(remedy, state.manner);
        return (
          <button
            type="button"
            key={remedy.code}
            onClick={() => {
              edit((before) => takeRemedy(before, remedy));
              say(benchWords.advice.taken(label));
              // The advice may be gone with its button; what it changed is the place to be.
              document.getElementById(then)?.focus();
            }}
          >
            {label}
          </button>
        );
      })}
    </p>
  );
}

/** A barred triangle: danger is never told by colour alone. */
export function Barred(): JSX.Element {
  return (
    <svg class="barred" viewBox="0 0 20 18" width="20" height="18" aria-hidden="true">
      <path d="M10 1.5 19 17H1Z" />
      <path d="M10 6.5v5.5M10 14v1.5" />
    </svg>
  );
}
