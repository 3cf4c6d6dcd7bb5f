import type { JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import type { IngredientId } from 'vitrose';
import { ingredientName } from 'vitrose/words';
import { benchWords } from '../../words/bench.js';
import { addLine } from '../state/edits.js';
import { isWeighed, newLine, usualWhen } from '../state/new-line.js';
import { type MeantAmount, readAmount } from '../state/read/amount.js';
import type { AmountUnit } from '../state/read/amount-units.js';
import type { Reading } from '../state/read/types.js';
import type { Found } from '../state/search.js';
import { isInShares } from '../state/shares.js';
import { numberOnly, unitOptions } from './amount-box.js';
import type { BenchProps } from './bench-context.js';
import { Pick } from './choice.js';
import { Echo } from './echo.js';
import { IngredientBox } from './ingredient-box.js';
import { Question } from './question.js';

/** A line to be: it stands on the table once it says what and how much. */
export function NewRow({ state, batch, edit, say }: BenchProps): JSX.Element {
  const words = benchWords.formula;
  const { manner } = state;
  const [found, setFound] = useState<Found | undefined>(undefined);
  const [id, setId] = useState<IngredientId | undefined>(undefined);
  const [text, setText] = useState('');
  const [chosenUnit, setUnit] = useState<AmountUnit | undefined>(undefined);
  const [asks, setAsks] = useState<string | undefined>(undefined);
  const amount = useRef<HTMLInputElement>(null);
  const unit = chosenUnit ?? (isInShares(batch) ? '%' : manner.units === 'us' ? 'oz' : 'g');
  const place = {
    ...manner,
    ingredient: id ?? 'sucrose',
    unit,
    shareOf:
      id !== undefined && usualWhen(id) === 'off-heat' ? words.ofFinished : words.ofDrySolids,
    weighThis: id !== undefined && isWeighed(id),
  };
  const reading = readAmount(text, place);
  const shown: Reading<MeantAmount> =
    asks === undefined ? reading : { kind: 'unread', reason: asks, offers: [] };
  const add = (): void => {
    if (found === undefined || id === undefined) {
      setAsks(words.pick);
      document.getElementById('new-ingredient')?.focus();
      return;
    }
    if (reading.kind !== 'read') {
      if (reading.kind === 'empty') setAsks(words.howMuch);
      amount.current?.focus();
      return;
    }
    edit((before) => addLine(before, newLine(found, id, reading.value)));
    say(`${ingredientName(id, manner)}, ${reading.echo}`);
    setFound(undefined);
    setId(undefined);
    setText('');
    setUnit(undefined);
    document.getElementById('new-ingredient')?.focus();
  };
  return (
    <fieldset class="line new">
      <legend class="only-read-aloud">{words.newIngredient}</legend>
      <IngredientBox
        id="new-ingredient"
        label={words.newIngredient}
        shown={
          id === undefined ? (found?.label ?? '') : (found?.label ?? ingredientName(id, manner))
        }
        manner={manner}
        onChoose={(one) => {
          setFound(one);
          setId(one.taken?.ingredient ?? one.candidates[0]);
          setAsks(undefined);
          if (one.candidates.length > 0) amount.current?.focus();
        }}
      />
      <div class="amount">
        <div class="field">
          <label for="new-amount">{words.newAmount}</label>
          <input
            ref={amount}
            id="new-amount"
            type="text"
            inputMode="decimal"
            autocomplete="off"
            spellcheck={false}
            value={text}
            aria-describedby="new-amount-echo"
            aria-invalid={shown.kind === 'unread'}
            onInput={(event) => {
              setText(event.currentTarget.value);
              setAsks(undefined);
            }}
            onKeyDown={(event) => {
              if (event.key !== 'Enter') return;
              event.preventDefault();
              add();
            }}
          />
        </div>
        <Pick
          id="new-unit"
          label={words.newUnit}
          hideLabel
          value={unit}
          options={unitOptions(unit)}
          onChoose={(next) => {
            setUnit(next);
            setText(numberOnly(text));
          }}
        />
        <Echo
          id="new-amount-echo"
          reading={shown}
          onOffer={(offer) => {
            setText(offer.text);
            setAsks(undefined);
            amount.current?.focus();
          }}
        />
      </div>
      <button type="button" class="add" onClick={add}>
        {words.add}
      </button>
      {found !== undefined && (found.candidates.length !== 1 || found.note !== undefined) && (
        <Question id="new" found={found} chosen={id} manner={manner} onChoose={setId} />
      )}
    </fieldset>
  );
}
