import type { JSX } from 'preact';
import { useEffect } from 'preact/hooks';
import type { FormulaLine, IngredientId } from 'vitrose';
import { ingredient } from 'vitrose';
import { benchWords } from '../../words/bench.js';
import { setUnread, setValue } from '../state/edits.js';
import { isKnown } from '../state/new-line.js';
import { readQuantity } from '../state/read/quantity.js';
import { tidy } from '../state/read/tidy.js';
import type { BenchProps } from './bench-context.js';
import { Echo } from './echo.js';
import { useTyped } from './use-typed.js';

/** What the label of a starch syrup says: its dextrose equivalent and its solids. */
export function LabelBox(
  props: BenchProps & {
    readonly line: FormulaLine;
    readonly index: number;
    readonly lineKey: string;
  },
): JSX.Element {
  const { line, index, lineKey } = props;
  const words = benchWords.formula;
  const usual = isKnown(line.ingredient) ? ingredient(line.ingredient as IngredientId) : undefined;
  const solids = line.drySolidsMassFraction ?? usual?.drySolidsMassFraction.value ?? 0;
  const de = line.dextroseEquivalent ?? usual?.dextroseEquivalent?.value ?? 0;
  return (
    <details class="label">
      <summary>
        {words.label}: DE {tidy(de)}, {tidy(solids * 100)} %
      </summary>
      <div class="row">
        <SmallBox
          {...props}
          id={`${lineKey}-de`}
          label={words.de}
          path={`/formula/${index}/dextroseEquivalent`}
          value={line.dextroseEquivalent}
          idle={tidy(de)}
          quantity="plain"
          limits={[1, 100]}
        />
        <SmallBox
          {...props}
          id={`${lineKey}-solids`}
          label={`${words.solids}, %`}
          path={`/formula/${index}/drySolidsMassFraction`}
          value={line.drySolidsMassFraction}
          idle={`${tidy(solids * 100)} %`}
          quantity="percent"
          limits={[0.01, 1]}
        />
      </div>
    </details>
  );
}

function SmallBox(
  props: BenchProps & {
    readonly id: string;
    readonly label: string;
    readonly path: string;
    readonly value: number | undefined;
    readonly idle: string;
    readonly quantity: 'plain' | 'percent';
    readonly limits: readonly [number, number];
  },
): JSX.Element {
  const { state, edit, id, label, path, value, idle, quantity, limits } = props;
  const { units } = state.manner;
  const times = quantity === 'percent' ? 100 : 1;
  const typed = useTyped(value, `${state.round}`, () =>
    value === undefined ? '' : tidy(value * times),
  );
  const wanted = { quantity, limits, units };
  const reading = readQuantity(typed.text, wanted);
  const take = (text: string): void => {
    const next = readQuantity(text, wanted);
    const meant = next.kind === 'read' ? next.value : undefined;
    typed.type(text, next.kind === 'unread' ? value : meant);
    edit((before) =>
      next.kind === 'unread'
        ? setUnread(before, id, { text, reason: next.reason })
        : setValue(setUnread(before, id, undefined), path, meant),
    );
  };
  useEffect(() => () => edit((before) => setUnread(before, id, undefined)), []);
  return (
    <div class="field">
      <label for={id}>{label}</label>
      <input
        id={id}
        type="text"
        inputMode="decimal"
        autocomplete="off"
        value={typed.text}
        aria-describedby={`${id}-echo`}
        aria-invalid={reading.kind === 'unread'}
        onInput={(event) => take(event.currentTarget.value)}
      />
      <Echo id={`${id}-echo`} reading={reading} idle={idle} onOffer={(offer) => take(offer.text)} />
    </div>
  );
}
