import type { JSX } from 'preact';
import { useRef } from 'preact/hooks';
import type { FormulaLine } from 'vitrose';
import { benchWords } from '../../words/bench.js';
import { withPlan } from '../state/amount-echo.js';
import { amountText, shareOfText } from '../state/amount-text.js';
import { setAmount, setUnread } from '../state/edits.js';
import { isWeighed } from '../state/new-line.js';
import { type MeantAmount, readAmount } from '../state/read/amount.js';
import { AMOUNT_UNIT_SIGNS, type AmountUnit, unitWord } from '../state/read/amount-units.js';
import { readNumber } from '../state/read/number.js';
import type { Reading } from '../state/read/types.js';
import { stepped } from '../state/step.js';
import type { BenchProps } from './bench-context.js';
import { Pick } from './choice.js';
import { Echo } from './echo.js';
import { useTyped } from './use-typed.js';

/** How much of a line: a text field and the unit beside it. */
export function AmountBox(
  props: BenchProps & {
    readonly line: FormulaLine;
    readonly index: number;
    readonly lineKey: string;
  },
): JSX.Element {
  const { state, planned, edit, line, index, lineKey } = props;
  const { manner } = state;
  const words = benchWords.formula;
  const id = `${lineKey}-amount`;
  const held = amountOf(line);
  const shown = amountText(line, manner);
  const typed = useTyped(held, `${manner.units} ${state.round}`, () => shown.text);
  const box = useRef<HTMLInputElement>(null);
  const place = {
    ...manner,
    ingredient: line.ingredient,
    unit: shown.unit,
    shareOf: shareOfText(line, manner),
    weighThis: isWeighed(line.ingredient),
  };
  const understood = (text: string, unit: AmountUnit): Reading<MeantAmount> => {
    const reading = readAmount(text, { ...place, unit });
    return reading.kind === 'empty'
      ? { kind: 'unread', reason: words.howMuch, offers: [] }
      : reading;
  };
  const reading = understood(typed.text, shown.unit);
  const take = (text: string, unit: AmountUnit = shown.unit): void => {
    const next = understood(text, unit);
    if (next.kind !== 'read') {
      typed.type(text, held);
      const reason = next.kind === 'unread' ? next.reason : '';
      edit((before) => setUnread(before, id, { text, reason }));
      return;
    }
    edit((before) => {
      const changed = setAmount(setUnread(before, id, undefined), index, next.value, planned.plan);
      const after = changed.now.batch.formula[index];
      typed.type(text, after === undefined ? held : amountOf(after));
      return changed;
    });
  };
  const echo = withPlan(
    reading,
    line,
    index,
    planned.isOld ? undefined : planned.plan,
    manner,
    typed.text,
  );
  return (
    <div class="amount">
      <div class="field">
        <label for={id} class="only-read-aloud">
          {words.amount(index + 1)}
        </label>
        <input
          ref={box}
          id={id}
          type="text"
          inputMode="decimal"
          autocomplete="off"
          spellcheck={false}
          value={typed.text}
          aria-describedby={`${id}-echo`}
          aria-invalid={reading.kind === 'unread'}
          onInput={(event) => take(event.currentTarget.value)}
          onKeyDown={(event) => {
            if (event.key === 'Enter') {
              event.preventDefault();
              focusNextAmount(event.currentTarget);
              return;
            }
            const next = stepped(typed.text, event, stepFor(shown.unit));
            if (next === undefined) return;
            event.preventDefault();
            take(next);
          }}
        />
      </div>
      <Pick
        id={`${lineKey}-unit`}
        label={words.unit(index + 1)}
        hideLabel
        value={unitShown(typed.text, shown.unit, manner.region)}
        options={unitOptions(shown.unit)}
        onChoose={(unit) => take(numberOnly(typed.text), unit)}
      />
      <Echo
        id={`${id}-echo`}
        reading={echo}
        onOffer={(offer) => {
          take(offer.text);
          box.current?.focus();
        }}
      />
    </div>
  );
}

/** A list of units for an amount: grams first, shares last. */
export function unitOptions(now: AmountUnit): readonly (readonly [AmountUnit, string])[] {
  const usual: readonly AmountUnit[] = [
    'g',
    'kg',
    'oz',
    'lb',
    'ml',
    'us-cup',
    'metric-cup',
    'us-tablespoon',
    'metric-tablespoon',
    'us-teaspoon',
    'metric-teaspoon',
    'us-fluid-ounce',
    'us-fluid-dram',
    'drop',
    '%',
  ];
  const all = usual.includes(now) ? usual : [...usual, now];
  return all.map((unit) => [unit, AMOUNT_UNIT_SIGNS[unit]] as const);
}

/** The unit that is typed goes before the one that stands beside. */
function unitShown(text: string, beside: AmountUnit, region: 'world' | 'us'): AmountUnit {
  const rest = readNumber(text)?.rest ?? '';
  if (rest === '') return beside;
  const word = unitWord(rest.split(/\s+/).slice(0, 2).join(' '), region);
  return word.kind === 'unit' ? word.unit : beside;
}

/** The number of an amount without its unit, exactly as typed. */
export function numberOnly(text: string): string {
  return readNumber(text)?.written ?? text;
}

function stepFor(unit: AmountUnit): number {
  return unit === 'g' || unit === 'ml' || unit === '%' || unit === 'drop' ? 1 : 0.5;
}

function amountOf(line: FormulaLine): unknown {
  const {
    ingredient: _i,
    when: _w,
    drySolidsMassFraction: _s,
    dextroseEquivalent: _d,
    ...amount
  } = line;
  return amount;
}

/** Enter walks down the column of amounts, and from the last one to a new line. */
function focusNextAmount(from: HTMLInputElement): void {
  const all = [...document.querySelectorAll<HTMLInputElement>('input[id$="-amount"]')];
  const next = all[all.indexOf(from) + 1];
  if (next === undefined || next.id === 'new-amount')
    document.getElementById('new-ingredient')?.focus();
  else next.focus();
  if (next !== undefined && next.id !== 'new-amount') next.select();
}
