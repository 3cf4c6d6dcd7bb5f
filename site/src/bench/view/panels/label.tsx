import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import { describeLabel } from 'vitrose/words';
import { panelWords } from '../../../words/bench-panels.js';
import { labelRows } from '../../state/label-rows.js';
import type { BenchProps } from '../bench-context.js';
import { Choice } from '../choice.js';
import { Buttons } from '../watch-line.js';
import { Part } from './part.js';

/** How sweet it is, and what a label prints of it by the rules of one place. */
export function LabelPart(props: BenchProps): JSX.Element | null {
  const { planned, state, described } = props;
  const { plan, isOld } = planned;
  const { manner } = state;
  const [rules, setRules] = useState<'us' | 'eu'>(manner.region === 'us' ? 'us' : 'eu');
  if (plan === undefined) return null;
  const words = panelWords.label;
  const label = plan.label[rules];
  const kept = label.claims.filter(({ kind }) => kind !== 'not-met');
  const others = label.claims.filter(({ kind }) => kind === 'not-met');
  const near = describeLabel({ ...label, claims: kept }, manner);
  const far = describeLabel({ ...label, claims: others }, manner);
  const sweetness = described?.sections
    .find(({ id }) => id === 'yield')
    ?.lines.find((line) => /sweet/i.test(line));
  const dull = plan.advice.find(({ code }) => code === 'less-sweet-than-sugar');
  const digits = (value: number, unit: string): string =>
    value.toFixed(unit === 'g' && value < 10 ? 1 : 0);
  return (
    <Part id="label" title={words.title} isOld={isOld}>
      {sweetness !== undefined && <p>{sweetness}</p>}
      {dull !== undefined && dull.remedies.length > 0 && (
        <Buttons {...props} remedies={dull.remedies} />
      )}
      <Choice<'us' | 'eu'>
        id="f-label-rules"
        label={words.rules}
        value={rules}
        options={[
          ['eu', words.eu],
          ['us', words.us],
        ]}
        onChoose={setRules}
      />
      <div class="table-scroll">
        <table class="food-label">
          <caption>{words.caption[rules]}</caption>
          <thead>
            <tr>
              <td />
              <th scope="col">{words.per100}</th>
              {label.perPiece !== undefined && <th scope="col">{words.perPiece}</th>}
            </tr>
          </thead>
          <tbody>
            {labelRows(plan, rules).map(({ id, unit, per100, perPiece }) => (
              <tr key={id}>
                <th scope="row">{words.rows[id as keyof typeof words.rows]}</th>
                <td>
                  {digits(per100, unit)} {unit}
                </td>
                {perPiece !== undefined && (
                  <td>
                    {digits(perPiece, unit)} {unit}
                  </td>
                )}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <ul class="says">
        {[...near.statements, ...near.claims, ...near.doses].map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {far.claims.length > 0 && (
        <details class="plain">
          <summary>{words.others(far.claims.length)}</summary>
          <ul class="says">
            {far.claims.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </details>
      )}
      <p class="quiet">{near.note}</p>
    </Part>
  );
}
