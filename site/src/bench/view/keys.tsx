import type { JSX } from 'preact';
import { benchLaterWords } from '../../words/bench-later.js';

/** What the keys do. */
export function Keys(): JSX.Element {
  return (
    <dl class="keys">
      {benchLaterWords.keys.map(([key, does]) => (
        <div key={key}>
          <dt>
            <kbd>{key}</kbd>
          </dt>
          <dd>{does}</dd>
        </div>
      ))}
    </dl>
  );
}
