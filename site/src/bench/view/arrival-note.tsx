import type { JSX } from 'preact';
import { benchLaterWords } from '../../words/bench-later.js';
import { inTheirKitchen } from '../state/arrive.js';
import type { BenchProps } from './bench-context.js';

/** What came in by a link or a file, whose kitchen it is computed in; or why nothing came in. */
export function ArrivalNote({ state, edit }: BenchProps): JSX.Element | null {
  const words = benchLaterWords.arrival;
  const { arrival, trouble, now } = state;
  if (trouble !== undefined) {
    return (
      <div class="arrival bad">
        <p>
          <b>{words.troubleTitle}.</b>
        </p>
        {trouble.map((one) => (
          <p key={one}>{one}</p>
        ))}
      </div>
    );
  }
  if (arrival === undefined) return null;
  return (
    <div class="arrival">
      <p>
        {words.opened(arrival.name)} {words[now.whose]}
      </p>
      {arrival.theirs !== undefined && (
        <button type="button" onClick={() => edit(inTheirKitchen)}>
          {words.seeTheirs}
        </button>
      )}
    </div>
  );
}
