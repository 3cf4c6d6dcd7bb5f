import type { JSX } from 'preact';
import { benchLaterWords } from '../../words/bench-later.js';
import type { BenchProps } from './bench-context.js';

/** What the plan took for granted, and what it was asked beyond what was tested. */
export function Known({ described, planned }: BenchProps): JSX.Element | null {
  const lines = (id: 'defaults' | 'warnings'): readonly string[] =>
    described?.sections.find((section) => section.id === id)?.lines ?? [];
  const defaults = lines('defaults');
  const warnings = lines('warnings');
  if (defaults.length === 0 && warnings.length === 0) return null;
  return (
    <section
      class={planned.isOld ? 'part known old' : 'part known'}
      aria-labelledby="defaults-title"
    >
      <h2 id="defaults-title">{benchLaterWords.defaults.title}</h2>
      <ul>
        {defaults.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      {warnings.length > 0 && (
        <>
          <h3>{benchLaterWords.warnings.title}</h3>
          <ul>
            {warnings.map((line) => (
              <li key={line}>{line}</li>
            ))}
          </ul>
        </>
      )}
    </section>
  );
}
