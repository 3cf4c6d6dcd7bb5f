import type { JSX } from 'preact';
import { caution, formatTemperature } from 'vitrose/words';
import { benchWords } from '../../../words/bench.js';
import { panelWords } from '../../../words/bench-panels.js';
import { jarIngredients } from '../../state/jar-label.js';
import type { BenchProps } from '../bench-context.js';
import { Barred } from '../watch-line.js';
import { glued } from './glued.js';
import { Part } from './part.js';

/** A label for the jar, to be printed alone and cut out. */
export function Jar({ planned, state }: BenchProps): JSX.Element | null {
  const { plan, isOld } = planned;
  const { manner } = state;
  if (plan === undefined) return null;
  const words = panelWords.jar;
  const has = (id: string): boolean => plan.cautions.some((one) => one.id === id);
  const dogs = has('dogs-xylitol') ? caution('dogs-xylitol', manner) : undefined;
  const choking = has('choking') ? caution('choking', manner) : undefined;
  const { glassTransitionC, marginK } = plan.keeping;
  const upTo = glued(formatTemperature(glassTransitionC.value, manner));
  return (
    <Part id="jar" title={words.title} isOld={isOld}>
      <div class="jar-label" id="jar-label">
        <p class="jar-name">{plan.name ?? benchWords.unnamed(manner.region)}</p>
        {dogs !== undefined && (
          <div class="jar-danger">
            <p class="jar-kills">
              <Barred /> {dogs.title}.
            </p>
            <p>
              {words.animals} {dogs.defer}
            </p>
          </div>
        )}
        <p>
          {words.ingredients}: {jarIngredients(plan, manner).join(', ')}.
        </p>
        <p class="jar-write">{words.contains}</p>
        {choking !== undefined && (
          <p>
            <b>{choking.title}.</b>
          </p>
        )}
        <p>{marginK.value > 0 ? words.keep(upTo) : words.keepSoft}</p>
        <p class="jar-write">{words.made}</p>
      </div>
      <button type="button" class="way" id="print-jar" onClick={printJar}>
        {words.print}
      </button>
      <p class="quiet">{words.note}</p>
    </Part>
  );
}

/** The printer takes what the style sheet leaves: for this once the label and not the card. */
function printJar(): void {
  document.documentElement.classList.add('prints-jar');
  addEventListener('afterprint', () => document.documentElement.classList.remove('prints-jar'), {
    once: true,
  });
  print();
}
