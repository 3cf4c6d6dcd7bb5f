import { readNumber } from './read/number.js';
import { tidy } from './read/tidy.js';

/** The part of a keyboard event that matters here. */
type Arrow = {
  readonly key: string;
  readonly shiftKey: boolean;
  readonly altKey: boolean;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
};

/**
 * The text of a number field after an arrow key: a step more or less, with Shift a tenth of it. The
 * unit that is typed stays.
 *
 * @returns nothing for any other key, or where there is no number to step from.
 */
export function stepped(text: string, event: Arrow, step: number): string | undefined {
  const { key, shiftKey, altKey, ctrlKey, metaKey } = event;
  if ((key !== 'ArrowUp' && key !== 'ArrowDown') || altKey || ctrlKey || metaKey) return undefined;
  const number = readNumber(text);
  if (number === undefined) return undefined;
  const by = (shiftKey ? step / 10 : step) * (key === 'ArrowUp' ? 1 : -1);
  // Kept to the digits of the step, so that a tenth never grows a tail.
  const next = Number((number.values[0] + by).toFixed(6));
  return number.rest === '' ? tidy(next) : `${tidy(next)} ${number.rest}`;
}
