import type { JSX } from 'preact';
import { benchWords } from '../../words/bench.js';
import { setValue } from '../state/edits.js';
import type { BenchProps } from './bench-context.js';

/** What the batch is called. */
export function NameBox({ state, batch, edit }: BenchProps): JSX.Element {
  return (
    <div class="field name">
      <label for="batch-name" class="only-read-aloud">
        {benchWords.name}
      </label>
      <input
        id="batch-name"
        type="text"
        autocomplete="off"
        maxLength={120}
        placeholder={benchWords.unnamed(state.manner.region)}
        value={batch.name ?? ''}
        onInput={(event) => {
          const { value } = event.currentTarget;
          edit((before) => setValue(before, '/name', value === '' ? undefined : value));
        }}
      />
    </div>
  );
}
