import { useRef, useState } from 'preact/hooks';

/** The text of a field and what it last stood for. */
export type Typed = {
  readonly text: string;
  /** The reader typed: the text is theirs, and stands for this value from now on. */
  readonly type: (text: string, standsFor: unknown) => void;
};

/**
 * Keeps what somebody types exactly as they type it.
 *
 * The text follows the document only when the document changes by another hand: undo, a remedy, a
 * change of units. What the reader has just typed is never written over.
 *
 * @param value - What the document holds.
 * @param manner - Whatever else changes how it is written: units, the round of the table.
 * @param write - The value as text.
 */
export function useTyped(value: unknown, manner: string, write: () => string): Typed {
  const key = `${JSON.stringify(value)} ${manner}`;
  const known = useRef(key);
  const text = useRef<string | undefined>(undefined);
  const [, redraw] = useState(0);
  if (text.current === undefined || known.current !== key) {
    known.current = key;
    text.current = write();
  }
  return {
    text: text.current,
    type: (typed, standsFor) => {
      text.current = typed;
      known.current = `${JSON.stringify(standsFor)} ${manner}`;
      redraw((count) => count + 1);
    },
  };
}
