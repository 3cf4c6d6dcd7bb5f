import type { JSX } from 'preact';
import { panelWords } from '../../../words/bench-panels.js';
import type { Beside } from '../../state/beside.js';
import { layBeside } from '../../state/edits.js';
import { Pick } from '../choice.js';
import { Compared } from './compared.js';
import { Part } from './part.js';
import type { BesideProps } from './props.js';

const NOTHING = '';

/** Another plan beside this one, in the same words; taken with one press, and taken back with one. */
export function BesidePart(props: BesideProps): JSX.Element | null {
  const { state, planned, offered, other, result, lay, edit, say } = props;
  const { plan, isOld } = planned;
  const { manner } = state;
  const words = panelWords.beside;
  if (plan === undefined) return null;
  const title = ({ kind, line }: Beside): string =>
    words.of[kind](manner.region) + (line === undefined ? '' : words.inLine(line));
  const take = (taken: Beside): void => {
    edit((before) => layBeside(before, taken.batch));
    // What it was before is one press away, and beside it stands what has become of it.
    lay('before');
    say(words.taken(title(taken)));
    document.getElementById('f-beside')?.focus({ preventScroll: true });
  };
  return (
    <Part id="beside" title={words.title} isOld={isOld}>
      <Pick
        id="f-beside"
        label={words.label}
        value={other?.id ?? NOTHING}
        options={[[NOTHING, words.nothing], ...offered.map((one) => [one.id, title(one)] as const)]}
        onChoose={lay}
      />
      {other !== undefined && result?.kind === 'refused' && <p>{words.refused}</p>}
      {other !== undefined && result?.kind === 'plan' && (
        <Compared plan={plan} other={result.plan} title={title(other)} manner={manner}>
          {other.takes ? (
            <button type="button" class="way" id="take-beside" onClick={() => take(other)}>
              {words.take}
            </button>
          ) : (
            <p class="quiet">{words.onlyToSee}</p>
          )}
        </Compared>
      )}
    </Part>
  );
}

/** Brings the part into sight with another plan in it. */
export function goBeside(): void {
  document.querySelector('section.beside')?.scrollIntoView({ block: 'start' });
  document.getElementById('f-beside')?.focus({ preventScroll: true });
}
