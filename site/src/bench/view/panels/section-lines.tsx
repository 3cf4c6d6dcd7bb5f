import type { JSX } from 'preact';
import type { DescribedPlan, SectionId } from 'vitrose/words';

/** What the plan says under one of its heads. */
export function SectionLines(props: {
  readonly described: DescribedPlan | undefined;
  readonly id: SectionId;
}): JSX.Element | null {
  const lines = props.described?.sections.find(({ id }) => id === props.id)?.lines ?? [];
  if (lines.length === 0) return null;
  return (
    <ul class="says">
      {lines.map((line) => (
        <li key={line} class={line.startsWith(' ') ? 'under' : undefined}>
          {line.trim()}
        </li>
      ))}
    </ul>
  );
}
