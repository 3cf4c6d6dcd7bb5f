import type { JSX } from 'preact';
import { useEffect, useRef } from 'preact/hooks';
import { BATCH_LIMITS } from 'vitrose';
import { benchWords } from '../../words/bench.js';
import { setUnread, setValue } from '../state/edits.js';
import { FIELDS, type FieldName } from '../state/fields.js';
import { valueAt } from '../state/place.js';
import { readQuantity, writeQuantity } from '../state/read/quantity.js';
import type { Reading } from '../state/read/types.js';
import { unitsOf } from '../state/read/units.js';
import { stepped } from '../state/step.js';
import type { BenchState } from '../state/types.js';
import type { BenchProps } from './bench-context.js';
import { Echo } from './echo.js';
import { useTyped } from './use-typed.js';

/** A number as people type it: a text field with the keypad for numbers. */
export function NumberBox(
  props: BenchProps & {
    readonly name: FieldName;
    readonly label: string;
    /** Where it is not simply the field of the document. */
    readonly onValue?: (state: BenchState, value: number | undefined) => BenchState;
    /** Under the field while it is empty. */
    readonly idle?: string | undefined;
    /** What it comes to, in place of what was understood. */
    readonly means?: string | undefined;
    readonly large?: boolean | undefined;
  },
): JSX.Element {
  const { state, batch, edit, name, label, onValue, idle, means, large } = props;
  const { path, limit, quantity, whole, step = 1, optional } = { ...defaults, ...FIELDS[name] };
  const { units } = state.manner;
  const wanted = { quantity, limits: BATCH_LIMITS[limit], units, whole };
  const held = valueAt(batch, path);
  const typed = useTyped(held, `${units} ${state.round}`, () =>
    typeof held === 'number' ? writeQuantity(held, wanted) : '',
  );
  const box = useRef<HTMLInputElement>(null);
  const id = `f-${name}`;
  const understood = (text: string): Reading<number> => {
    const reading = readQuantity(text, wanted);
    return reading.kind === 'empty' && optional !== true
      ? { kind: 'unread', reason: benchWords.unread.missing, offers: [] }
      : reading;
  };
  const reading = understood(typed.text);
  // A field that goes takes with it what could not be read in it.
  useEffect(() => () => edit((before) => setUnread(before, id, undefined)), []);
  const take = (text: string): void => {
    const next = understood(text);
    if (next.kind === 'unread') {
      typed.type(text, held);
      edit((before) => setUnread(before, id, { text, reason: next.reason }));
      return;
    }
    const value = next.kind === 'read' ? next.value : undefined;
    typed.type(text, value);
    edit((before) => {
      const clear = setUnread(before, id, undefined);
      if (value === held) return clear;
      return onValue === undefined ? setValue(clear, path, value) : onValue(clear, value);
    });
  };
  const [own] = unitsOf(quantity, units);
  return (
    <div class={large === true ? 'field large' : 'field'}>
      <label for={id}>
        {label}
        {own.sign !== '' && <span class="only-read-aloud">, {own.sign}</span>}
      </label>
      <div class="typed">
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
            const next = stepped(typed.text, event, step);
            if (next === undefined) return;
            event.preventDefault();
            take(next);
          }}
        />
        {own.sign !== '' && (
          <span class="sign" aria-hidden="true">
            {own.sign}
          </span>
        )}
      </div>
      <Echo
        id={`${id}-echo`}
        reading={
          reading.kind === 'read'
            ? { ...reading, echo: means ?? (quantity === 'count' ? '' : reading.echo) }
            : reading
        }
        idle={idle}
        onOffer={(offer) => {
          take(offer.text);
          box.current?.focus();
        }}
      />
    </div>
  );
}

const defaults: { whole?: boolean; step?: number; optional?: boolean } = {};
