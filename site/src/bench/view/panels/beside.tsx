import type { JSX } from 'preact';
import { useMemo } from 'preact/hooks';
import { planBatch } from 'vitrose';
import { comparePlans } from 'vitrose/words';
import { panelWords } from '../../../words/bench-panels.js';
import { type BesideId, besides } from '../../state/beside.js';
import { layBeside } from '../../state/edits.js';
import type { BenchProps } from '../bench-context.js';
import { Pick } from '../choice.js';
import { Part } from './part.js';

const NOTHING = '';

/** Another plan beside this one, in the same words; taken with one press, and taken back with one. */
export function BesidePart(
  props: BenchProps & {
    readonly chosen: BesideId | '';
    readonly choose: (id: BesideId | '') => void;
  },
): JSX.Element | null {
  const { state, planned, chosen, choose, edit, say } = props;
  const { plan, isOld } = planned;
  const { manner } = state;
  const words = panelWords.beside;
  const offered = useMemo(() => besides(state), [state.now, state.past]);
  const other = offered.find(({ id }) => id === chosen);
  const result = useMemo(
    () => (other === undefined ? undefined : planBatch(other.batch)),
    [other?.batch],
  );
  if (plan === undefined) return null;
  const title = (id: BesideId): string => words.of[id](manner.region);
  return (
    <Part id="beside" title={words.title} isOld={isOld}>
      <Pick<BesideId | ''>
        id="f-beside"
        label={words.label}
        value={other === undefined ? NOTHING : other.id}
        options={[[NOTHING, words.nothing], ...offered.map(({ id }) => [id, title(id)] as const)]}
        onChoose={choose}
      />
      {other !== undefined && result?.kind === 'refused' && <p>{words.refused}</p>}
      {other !== undefined && result?.kind === 'plan' && (
        <>
          <div class="table-scroll">
            <table class="compared">
              <caption class="only-read-aloud">{words.caption(title(other.id))}</caption>
              <thead>
                <tr>
                  <td />
                  <th scope="col">{words.here}</th>
                  <th scope="col">{title(other.id)}</th>
                </tr>
              </thead>
              <tbody>
                {comparePlans(plan, result.plan, manner).map(
                  ({ id, label, here, there, differs }) => (
                    <tr key={id} class={differs ? 'differs' : undefined}>
                      <th scope="row">{label}</th>
                      <td>{here}</td>
                      <td>
                        {there}
                        {differs && <span class="only-read-aloud"> {words.differs}</span>}
                      </td>
                    </tr>
                  ),
                )}
              </tbody>
            </table>
          </div>
          {other.takes && (
            <button
              type="button"
              class="way"
              id="take-beside"
              onClick={() => {
                edit((before) => layBeside(before, other.batch));
                choose(NOTHING);
                say(words.taken(title(other.id)));
              }}
            >
              {words.take}
            </button>
          )}
        </>
      )}
    </Part>
  );
}
