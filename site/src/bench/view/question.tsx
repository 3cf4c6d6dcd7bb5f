import type { JSX } from 'preact';
import type { IngredientId } from 'vitrose';
import { ingredientName } from 'vitrose/words';
import { benchWords } from '../../words/bench.js';
import type { Manner } from '../state/read/types.js';
import type { Found } from '../state/search.js';

/** The one question a shop name asks, and the answers. */
export function Question(props: {
  readonly id: string;
  readonly found: Found;
  readonly chosen: string | undefined;
  readonly manner: Manner;
  readonly onChoose: (id: IngredientId) => void;
}): JSX.Element {
  const { id, found, chosen, manner, onChoose } = props;
  const { candidates, question, note } = found;
  return (
    <div class="question">
      {question !== undefined && candidates.length > 1 && (
        <fieldset class="choice">
          <legend>{question}</legend>
          {candidates.map((one) => (
            <span key={one}>
              <input
                type="radio"
                id={`${id}-is-${one}`}
                name={`${id}-is`}
                checked={one === chosen}
                onChange={() => onChoose(one)}
              />
              <label for={`${id}-is-${one}`}>{ingredientName(one, manner)}</label>
            </span>
          ))}
        </fieldset>
      )}
      {question !== undefined && candidates.length === 1 && <p>{question}</p>}
      {note !== undefined && <p class="quiet">{note}</p>}
      {candidates.length === 0 && note === undefined && <p>{benchWords.formula.noneFits}</p>}
    </div>
  );
}
