import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { describeLabel } from 'vitrose/words';
import { panelWords } from '../../../words/bench-panels.js';
import { type LabelRules, labelRows } from '../../state/label-rows.js';
import type { BenchProps } from '../bench-context.js';
import { Choice } from '../choice.js';
import { Buttons } from '../watch-line.js';
import { Part } from './part.js';
import { Says } from './section-lines.js';

/** How sweet it is, and what a label prints of it by the rules of one place. */
export function LabelPart(props: BenchProps): JSX.Element | null {
  const { planned, described, state } = props;
  const { plan, isOld } = planned;
  const { manner } = state;
  const [picked, pick] = useState<LabelRules | undefined>(undefined);
  if (plan === undefined) return null;
  const words = panelWords.label;
  const rules = picked ?? (manner.region === 'us' ? 'us' : 'eu');
  const label = plan.label[rules];
  const kept = label.claims.filter(({ kind }) => kind !== 'not-met');
  const others = label.claims.filter(({ kind }) => kind === 'not-met');
  const near = describeLabel({ ...label, claims: kept }, manner);
  const far = describeLabel({ ...label, claims: others }, manner);
  // The library says it with its band, and after it the sugar alcohols of a piece.
  const made = described?.sections.find(({ id }) => id === 'yield')?.lines ?? [];
  const taste = made.slice(made.findIndex((line) => line.includes('as sweet as sugar')));
  const dull = plan.advice.find(({ code }) => code === 'less-sweet-than-sugar');
  const rows = labelRows(plan, rules);
  const hasPieces = label.perPiece !== undefined;
  return (
    <Part id="label" title={words.title} isOld={isOld}>
      <Says lines={taste} />
      {dull !== undefined && <Buttons {...props} remedies={dull.remedies} />}
      <Choice<LabelRules>
        id="f-label-rules"
        label={words.rules}
        value={rules}
        options={[
          ['eu', words.eu],
          ['us', words.us],
        ]}
        onChoose={pick}
      />
      <table class="result-table food-label">
        <caption>{words.caption[rules]}</caption>
        <thead>
          <tr>
            <td />
            <th scope="col">{words.per100}</th>
            {hasPieces && <th scope="col">{words.perPiece}</th>}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ id, isPart, per100, perPiece }) => (
            <tr key={id} class={isPart ? 'is-part' : undefined}>
              <th scope="row">{words.rows[id]}</th>
              <td>{per100}</td>
              {hasPieces && <td>{perPiece}</td>}
            </tr>
          ))}
        </tbody>
      </table>
      {near.statements.length > 0 && <h3>{words.mustSay}</h3>}
      <Says lines={near.statements} />
      <h3>{words.claims}</h3>
      <Says lines={[...near.claims, ...near.doses]} />
      {far.claims.length > 0 && (
        <details class="plain" id="other-claims">
          <summary>{words.others(far.claims.length)}</summary>
          <Says lines={far.claims} />
        </details>
      )}
      <p class="quiet">{near.note}</p>
    </Part>
  );
}
