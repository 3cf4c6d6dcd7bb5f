import type { ComponentChildren, JSX } from 'preact';
import { DataTable, type FigureTable } from './data-table.js';

/** A drawing with its question above, and under it what it leaves out, its sources and the numbers. */
export function Figure(props: {
  readonly id: string;
  readonly question: string;
  /** What the model leaves out, then where the numbers come from. */
  readonly notes: readonly string[];
  readonly table: FigureTable;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { id, question, notes, table, children } = props;
  return (
    <figure class="vf" aria-labelledby={`${id}-question`}>
      <figcaption id={`${id}-question`} class="vf-question">
        {question}
      </figcaption>
      {children}
      {notes.map((note) => (
        <p key={note} class="vf-note">
          {note}
        </p>
      ))}
      <DataTable {...table} />
    </figure>
  );
}
