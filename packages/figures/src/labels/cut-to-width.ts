import { textWidthPx } from './text-width.js';

/** A text that is not ours, cut with an ellipsis where it is wider than the room it has. */
export function cutToWidth(text: string, sizePx: number, widthPx: number): string {
  if (textWidthPx(text, sizePx) <= widthPx) return text;
  const letters = [...text];
  while (letters.length > 0 && textWidthPx(`${letters.join('').trimEnd()}…`, sizePx) > widthPx)
    letters.pop();
  return `${letters.join('').trimEnd()}…`;
}
