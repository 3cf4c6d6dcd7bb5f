import type { JSX } from 'preact';
import { caution, ingredientName } from 'vitrose/words';
import { benchWords } from '../../../words/bench.js';
import { panelWords } from '../../../words/bench-panels.js';
import type { BenchProps } from '../bench-context.js';
import { Barred } from '../watch-line.js';
import { Part } from './part.js';

/** A label for the jar, to be printed alone and cut out. */
export function Jar({ planned, state }: BenchProps): JSX.Element | null {
  const { plan, isOld } = planned;
  const { manner } = state;
  if (plan === undefined) return null;
  const words = panelWords.jar;
  const named = [...plan.formula]
    // Water boils away; what is left of it is in the sweet, not on the label.
    .filter(({ ingredient }) => ingredient !== 'water')
    .sort((a, b) => b.drySolidsG - a.drySolidsG)
    .map(({ ingredient }) => ingredientName(ingredient, manner));
  const names = named.filter((name, at) => named.indexOf(name) === at);
  const has = (id: string): boolean => plan.cautions.some((one) => one.id === id);
  const dogs = has('dogs-xylitol') ? caution('dogs-xylitol', manner) : undefined;
  const choking = has('choking') ? caution('choking', manner) : undefined;
  return (
    <Part id="jar" title={words.title} isOld={isOld}>
      <div class="jar-label" id="jar-label">
        <p class="jar-name">{plan.name ?? benchWords.unnamed(manner.region)}</p>
        {dogs !== undefined && (
          <p class="jar-danger">
            <Barred /> <b>{dogs.title}.</b> {words.animals}
          </p>
        )}
        <p>
          {words.ingredients}: {names.join(', ')}.
        </p>
        {choking !== undefined && (
          <p>
            <b>{choking.title}.</b>
          </p>
        )}
        <p>{words.keep}</p>
        <p class="jar-write">{words.contains}</p>
        <p class="jar-write">{words.made}</p>
      </div>
      <button type="button" class="way no-print" id="print-jar" onClick={printJar}>
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
