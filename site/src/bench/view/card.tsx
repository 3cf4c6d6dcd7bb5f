import type { JSX } from 'preact';
import { formatMass, formatTemperature, ingredientName } from 'vitrose/words';
import { benchWords } from '../../words/bench.js';
import { benchLaterWords } from '../../words/bench-later.js';
import { type StepLine, stepLines, topCautions } from '../state/step-lines.js';
import { stopWords } from '../state/stop-words.js';
import type { BenchProps } from './bench-context.js';
import { Barred } from './watch-line.js';

/** The plan on one sheet of paper, to stand beside the hob. It is drawn on paper only. */
export function Card({ planned, described, state }: BenchProps): JSX.Element | null {
  const { plan } = planned;
  if (plan === undefined || described === undefined) return null;
  const { manner } = state;
  const words = benchLaterWords.card;
  const stop = stopWords(described);
  const answer = described.answer.filter(({ id }) => id !== 'stop' && id !== 'watch');
  const steps = stepLines(plan, described, manner).filter(({ id }) => id !== 'weigh');
  const top = topCautions(plan, manner);
  const { hereC } = plan.target;
  const { waterBoilsAtC, readingDifferenceK } = plan.kitchen;
  const water = waterBoilsAtC.value + (readingDifferenceK?.value ?? 0);
  return (
    <section class={`card ${lengthOf(steps)}`} aria-hidden="true">
      <h1>{plan.name ?? benchWords.unnamed(manner.region)}</h1>
      <p class="card-kitchen">
        {words.kitchen(formatTemperature(water, { ...manner, decimals: 1 }))}
      </p>
      <div class="card-stop">
        <p>{benchWords.answer.stop}</p>
        <p class="card-reading">
          {stop?.reading ?? formatTemperature(hereC.value, manner)}
          <span>{stop?.unit}</span>
        </p>
        {stop !== undefined && (
          <p>
            {words.window(stop.low, stop.high)} · {stop.other}
          </p>
        )}
      </div>
      <dl class="card-lines">
        {answer.map(({ id, label, text }) => (
          <div key={id}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <div class="card-columns">
        <div>
          <h2>{words.weigh}</h2>
          <table>
            <tbody>
              {plan.formula.map(({ path, ingredient, massG, when }) => (
                <tr key={path}>
                  <td>{formatMass(massG.value, manner)}</td>
                  <td>
                    {ingredientName(ingredient, manner)}
                    {when === 'off-heat' && <i>, {benchWords.formula.times['off-heat']}</i>}
                  </td>
                </tr>
              ))}
              <tr>
                <td>{formatMass(plan.composition.chargeG.value, manner)}</td>
                <td>{words.charge}</td>
              </tr>
            </tbody>
          </table>
          {top.map((one) => (
            <p class="card-caution" key={one.id}>
              <Barred /> <b>{one.title}.</b>{' '}
              {one.text.split('. ').slice(0, 2).join('. ').replace(/\.?$/, '.')}
            </p>
          ))}
          <p class="card-write">{words.reads}</p>
          <p class="card-write">{words.notes}</p>
          <p class="card-write" />
        </div>
        <div>
          <h2>{words.steps}</h2>
          <ol>
            {steps.map(({ id, text, cautions }, at) => (
              <li key={`${id}-${at}`}>
                {text}
                {cautions.length > 0 && (
                  <span class="card-caution">
                    {' '}
                    {cautions.map(({ title }) => `${title}.`).join(' ')}
                  </span>
                )}
              </li>
            ))}
          </ol>
        </div>
      </div>
      <p class="card-foot">{words.made}</p>
    </section>
  );
}

/** Letters of steps and cautions from which the sheet is set smaller, so that it stays one. */
const LONG = 2_200;
const LONGEST = 3_300;

function lengthOf(steps: readonly StepLine[]): '' | 'long' | 'longest' {
  const letters = steps.reduce(
    (sum, { text, cautions }) =>
      sum + text.length + cautions.reduce((all, { title }) => all + title.length, 0) + 40,
    0,
  );
  return letters > LONGEST ? 'longest' : letters > LONG ? 'long' : '';
}
