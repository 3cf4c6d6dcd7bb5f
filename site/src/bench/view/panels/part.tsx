import type { ComponentChildren, JSX } from 'preact';

/** A part of the page under its own head; grey while it is not this batch's. */
export function Part(props: {
  readonly id: string;
  readonly title: string;
  readonly isOld: boolean;
  readonly children: ComponentChildren;
}): JSX.Element {
  const { id, title, isOld } = props;
  return (
    <section class={isOld ? `part ${id} old` : `part ${id}`} aria-labelledby={`${id}-title`}>
      <h2 id={`${id}-title`}>{title}</h2>
      {props.children}
    </section>
  );
}
