import { CookTime } from '@vitrose/figures';
import type { ComponentChildren, JSX } from 'preact';
import type { PlanDocument } from 'vitrose';
import { comparePlans } from 'vitrose/words';
import { panelWords } from '../../../words/bench-panels.js';
import type { Manner } from '../../state/read/types.js';
import { cookState } from './cook-state.js';
import { Fitted } from './fitted.js';

/** Two plans line by line; what differs carries a mark and stands in strong type. */
export function Compared(props: {
  readonly plan: PlanDocument;
  readonly other: PlanDocument;
  readonly title: string;
  readonly manner: Manner;
  /** What can be done about it. */
  readonly children: ComponentChildren;
}): JSX.Element {
  const { plan, other, title, manner } = props;
  const words = panelWords.beside;
  const lines = comparePlans(plan, other, manner);
  const isSame = lines.every(({ differs }) => !differs);
  const [one, two] = [plan.cooking, other.cooking];
  const takesOtherTime = lines.some(({ id, differs }) => differs && id === 'minutes');
  return (
    <>
      <table class="result-table compared">
        <caption>{isSame ? words.same(title) : words.caption(title)}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">{words.here}</th>
            <th scope="col">{title}</th>
          </tr>
        </thead>
        <tbody>
          {lines.map(({ id, label, here, there, differs }) => (
            <tr key={id} class={differs ? 'differs' : undefined}>
              <th scope="row">{label}</th>
              <td>{here}</td>
              <td>
                {differs && <Differs />}
                {there}
                {differs && <span class="only-read-aloud"> {words.differs}</span>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {props.children}
      {takesOtherTime && one !== undefined && two !== undefined && (
        <Fitted
          draw={(widthPx) => (
            <CookTime
              {...cookState(one, manner)}
              id="beside-cook-time"
              other={{ label: title, path: cookState(two, manner).path }}
              widthPx={widthPx}
              compact
            />
          )}
        />
      )}
    </>
  );
}

/** Not the same: drawn, since not every type has the sign. */
function Differs(): JSX.Element {
  return (
    <svg class="mark" viewBox="0 0 14 14" width="14" height="14" aria-hidden="true">
      <path d="M2 5h10M2 9h10M10 1.5 4 12.5" />
    </svg>
  );
}
