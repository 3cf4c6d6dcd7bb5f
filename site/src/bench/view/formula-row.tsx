import type { JSX } from 'preact';
import { useState } from 'preact/hooks';
import type { BatchDocument, FormulaLine, IngredientId, When } from 'vitrose';
import { ingredientName } from 'vitrose/words';
import { benchWords } from '../../words/bench.js';
import { removeLine, setIngredient, setWhen, takeRemedy } from '../state/edits.js';
import { isStarchSyrup } from '../state/new-line.js';
import type { Found } from '../state/search.js';
import { AmountBox } from './amount-box.js';
import type { BenchProps } from './bench-context.js';
import { Pick } from './choice.js';
import { IngredientBox } from './ingredient-box.js';
import { LabelBox } from './label-box.js';
import { Question } from './question.js';

type WhenKind = keyof typeof benchWords.formula.times;

/** One line: what, how much, when, and what its label says. */
export function FormulaRow(
  props: BenchProps & {
    readonly line: FormulaLine;
    readonly index: number;
    readonly lineKey: string;
  },
): JSX.Element {
  const { state, edit, line, index, lineKey } = props;
  const words = benchWords.formula;
  const [asked, setAsked] = useState<Found | undefined>(undefined);
  const name = ingredientName(line.ingredient, state.manner);
  const take = (found: Found, id: IngredientId): void => {
    const { taken } = found;
    const label =
      taken?.ingredient === id
        ? {
            ...(taken.dextroseEquivalent === undefined
              ? {}
              : { dextroseEquivalent: taken.dextroseEquivalent }),
            ...(taken.drySolidsMassFraction === undefined
              ? {}
              : { drySolidsMassFraction: taken.drySolidsMassFraction }),
          }
        : {};
    edit((before) => setIngredient(before, index, id, label));
  };
  return (
    <li class="line">
      <IngredientBox
        id={`${lineKey}-ingredient`}
        label={words.ingredient(index + 1)}
        hideLabel
        shown={name}
        manner={state.manner}
        onChoose={(found) => {
          const [first] = found.candidates;
          setAsked(found.candidates.length === 1 && found.note === undefined ? undefined : found);
          if (first !== undefined) take(found, found.taken?.ingredient ?? first);
        }}
      />
      <AmountBox {...props} />
      <WhenBox {...props} />
      <button
        type="button"
        class="remove"
        aria-label={words.remove(name)}
        onClick={() => {
          focusAfterRemoval(index);
          edit((before) => removeLine(before, index));
        }}
      >
        <svg viewBox="0 0 16 16" width="16" height="16" aria-hidden="true">
          <path d="M3 3 13 13M13 3 3 13" />
        </svg>
      </button>
      {asked !== undefined && (
        <Question
          id={lineKey}
          found={asked}
          chosen={line.ingredient}
          manner={state.manner}
          onChoose={(id) => take(asked, id)}
        />
      )}
      {isStarchSyrup(line.ingredient) && <LabelBox {...props} />}
      {(line.ingredient === 'glucose-syrup' || line.ingredient === 'dried-glucose-syrup') && (
        <SwapButton {...props} to={line.ingredient === 'glucose-syrup' ? 'dried' : 'liquid'} />
      )}
    </li>
  );
}

/** Dried for liquid or liquid for dried: the same solids, and the water of the whole stays. */
function SwapButton(
  props: BenchProps & {
    readonly index: number;
    readonly lineKey: string;
    readonly to: 'dried' | 'liquid';
  },
): JSX.Element {
  const { edit, say, batch, index, lineKey, to } = props;
  const words = benchWords.formula.swap;
  const [refused, setRefused] = useState<{ readonly reason: string; readonly of: BatchDocument }>();
  return (
    <p class="swap">
      <button
        type="button"
        id={`${lineKey}-swap`}
        onClick={() => {
          void import('../state/swap.js').then(({ swapSyrupForm }) =>
            edit((before) => {
              const answer = swapSyrupForm(before.now.batch, index);
              if (answer.kind === 'none') {
                setRefused({ reason: answer.reason, of: before.now.batch });
                return before;
              }
              say(words.done[to]);
              return takeRemedy(before, answer);
            }),
          );
        }}
      >
        {words.as[to]}
      </button>
      {/* Once something else is changed, it may be otherwise. */}
      {refused?.of === batch && (
        <span role="alert">
          {words.none[refused.reason === 'too-little-water' ? refused.reason : 'other']}
        </span>
      )}
    </p>
  );
}

function WhenBox({
  edit,
  line,
  index,
  lineKey,
}: BenchProps & {
  readonly line: FormulaLine;
  readonly index: number;
  readonly lineKey: string;
}): JSX.Element {
  const words = benchWords.formula;
  const when: When = line.when ?? 'start';
  const kind: WhenKind = typeof when === 'object' ? 'at' : when;
  const options = (Object.entries(words.times) as [WhenKind, string][]).filter(
    ([one]) => one !== 'at' || kind === 'at',
  );
  return (
    <Pick
      id={`${lineKey}-when`}
      label={words.when(index + 1)}
      hideLabel
      value={kind}
      options={options}
      onChoose={(next) => {
        if (next !== 'at') edit((before) => setWhen(before, index, next));
      }}
    />
  );
}

/** The line goes and the focus must not go with it: to the next line's field, or to the new one. */
function focusAfterRemoval(index: number): void {
  const boxes = [...document.querySelectorAll<HTMLElement>('.line .remove')];
  const next = boxes[index + 1] ?? document.getElementById('new-ingredient');
  next?.focus();
}
