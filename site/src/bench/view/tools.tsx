import type { ComponentChildren, JSX } from 'preact';
import { useRef, useState } from 'preact/hooks';
import { benchWords } from '../../words/bench.js';
import type { BenchState } from '../state/types.js';
import type { BenchProps } from './bench-context.js';
import { Choice } from './choice.js';

/** What can be done with the whole batch, and how the page speaks. */
export function Tools(
  props: BenchProps & {
    readonly onUndo: () => void;
    readonly onRedo: () => void;
    readonly onEmpty: () => void;
    readonly onSave: () => void;
    readonly onFile: (file: File) => void;
    /** The list of keys, once it has come. */
    readonly keys: ComponentChildren;
  },
): JSX.Element {
  const { state, onUndo, onRedo, onEmpty, onSave, onFile, keys } = props;
  const words = benchWords.tools;
  const file = useRef<HTMLInputElement>(null);
  const [showsKeys, setShowsKeys] = useState(false);
  return (
    <div class="tools">
      <fieldset class="buttons">
        <legend class="only-read-aloud">{words.label}</legend>
        {/* Not disabled: a button that goes dead under the finger takes the focus with it. */}
        <button type="button" onClick={onUndo} aria-disabled={state.past.length === 0}>
          {words.undo}
        </button>
        <button type="button" onClick={onRedo} aria-disabled={state.future.length === 0}>
          {words.redo}
        </button>
        <button type="button" onClick={() => print()}>
          {words.print}
        </button>
        <button type="button" onClick={() => document.getElementById('share')?.focus()}>
          {words.share}
        </button>
        <button type="button" onClick={onSave}>
          {words.save}
        </button>
        <button type="button" onClick={() => file.current?.click()}>
          {words.open}
        </button>
        <input
          ref={file}
          class="only-read-aloud"
          type="file"
          id="open-file"
          accept=".json,application/json"
          tabIndex={-1}
          aria-label={words.open}
          onChange={(event) => {
            const [chosen] = event.currentTarget.files ?? [];
            if (chosen !== undefined) onFile(chosen);
            // The same file may be opened again.
            event.currentTarget.value = '';
          }}
        />
        <button type="button" onClick={onEmpty}>
          {words.empty}
        </button>
        <button
          type="button"
          aria-expanded={showsKeys}
          aria-controls="keys"
          onClick={() => setShowsKeys(!showsKeys)}
        >
          {words.keys}
        </button>
      </fieldset>
      <div id="keys" hidden={!showsKeys}>
        {keys}
      </div>
    </div>
  );
}

/** How the page speaks: its units and its words. */
export function MannerChoice({ state, edit }: BenchProps): JSX.Element {
  const words = benchWords.tools;
  const speak = (manner: Partial<BenchState['manner']>): void =>
    edit((before) => ({ ...before, manner: { ...before.manner, ...manner } }));
  return (
    <div class="manner">
      <Choice
        id="bench-units"
        label={words.units}
        value={state.manner.units}
        options={[
          ['metric', words.metric],
          ['us', words.us],
        ]}
        onChoose={(units) => speak({ units })}
      />
      <Choice
        id="bench-region"
        label={words.words}
        value={state.manner.region}
        options={[
          ['world', words.world],
          ['us', words.american],
        ]}
        onChoose={(region) => speak({ region })}
      />
    </div>
  );
}
