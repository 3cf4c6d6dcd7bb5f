import type { JSX } from 'preact';
import type { DescribedPlan, SectionId } from 'vitrose/words';
import { glued } from './glued.js';

/** What the plan says under one of its heads. */
export function SectionLines(props: {
  readonly described: DescribedPlan | undefined;
  readonly id: SectionId;
}): JSX.Element | null {
  return <Says lines={props.described?.sections.find(({ id }) => id === props.id)?.lines ?? []} />;
}

/** Sentences, each on its own; what is set in belongs to the one before. */
export function Says({ lines }: { readonly lines: readonly string[] }): JSX.Element | null {
  if (lines.length === 0) return null;
  return (
    <ul class="says">
      {lines.map((line) => (
        <li key={line} class={line.startsWith(' ') ? 'under' : undefined}>
          {glued(line.trim())}
        </li>
      ))}
    </ul>
  );
}
