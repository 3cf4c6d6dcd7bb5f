import { Fragment, type JSX } from 'preact';
import type { Caution } from 'vitrose/words';
import { benchLaterWords } from '../../words/bench-later.js';
import { panelWords } from '../../words/bench-panels.js';
import { besides } from '../state/beside.js';
import { otherCautions, stepLines, topCautions } from '../state/step-lines.js';
import type { BenchProps } from './bench-context.js';
import { goBeside } from './panels/beside.js';
import type { Lay } from './panels/props.js';
import { Barred } from './watch-line.js';

/** The three cautions that matter most, the steps with theirs, and the rest. */
export function Steps(props: BenchProps & { readonly lay: Lay }): JSX.Element | null {
  const { planned, described, state } = props;
  const { plan, isOld } = planned;
  if (plan === undefined || described === undefined) return null;
  const words = benchLaterWords.steps;
  const others = otherCautions(plan, state.manner);
  return (
    <section class={isOld ? 'part steps old' : 'part steps'} aria-labelledby="steps-title">
      <h2 id="steps-title">{words.title}</h2>
      <div class="top-cautions">
        <h3>{words.top}</h3>
        {topCautions(plan, state.manner).map((one) => (
          <Fragment key={one.id}>
            <CautionText caution={one} />
            {one.id === 'dogs-xylitol' && <WithoutXylitol {...props} />}
          </Fragment>
        ))}
      </div>
      <ol>
        {stepLines(plan, described, state.manner).map(({ id, text, cautions }, at) => (
          // Two late additions can be the same kind of step.
          <li key={`${id}-${at}`}>
            <p>{text}</p>
            {cautions.map((one) => (
              <CautionLine key={one.id} caution={one} />
            ))}
          </li>
        ))}
      </ol>
      {others.length > 0 && (
        <>
          <h3>{words.more}</h3>
          {others.map((one) => (
            <CautionLine key={one.id} caution={one} />
          ))}
        </>
      )}
    </section>
  );
}

/** The way out beside the caution: it shows what that costs and gains, and takes nothing yet. */
function WithoutXylitol({ state, lay }: BenchProps & { readonly lay: Lay }): JSX.Element | null {
  if (!besides(state).some(({ id }) => id === 'without-xylitol')) return null;
  return (
    <p class="ways">
      <button
        type="button"
        id="without-xylitol"
        onClick={() => {
          lay('without-xylitol');
          goBeside();
        }}
      >
        {panelWords.withoutXylitol}
      </button>
    </p>
  );
}

/** In full: at the top nothing has to be opened. */
function CautionText({ caution }: { readonly caution: Caution }): JSX.Element {
  return (
    <p class="caution">
      <Barred /> <b>{caution.title}.</b> {caution.text} {caution.defer}
    </p>
  );
}

/** By its title, which is the whole of it in one line; the rest opens. */
function CautionLine({ caution }: { readonly caution: Caution }): JSX.Element {
  return (
    <details class="caution">
      <summary>
        <Barred /> <b>{caution.title}.</b>
      </summary>
      <p>
        {caution.text} {caution.defer}
      </p>
    </details>
  );
}
