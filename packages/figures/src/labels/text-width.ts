/**
 * How wide a line of text may get, px: never less than it is drawn.
 *
 * For each group of letters the widest of them in Hanken Grotesk at weight 600, in ems, and a little
 * more.
 */
export function textWidthPx(text: string, sizePx: number): number {
  let ems = 0;
  for (const letter of text) ems += letterEms(letter);
  return ems * sizePx;
}

function letterEms(letter: string): number {
  if ("il.,:;'|!jI ".includes(letter)) return 0.29;
  if ('ftr-()[]/°·–'.includes(letter)) return 0.44;
  if ('sz*'.includes(letter)) return 0.5;
  if ('aceghknuvxy'.includes(letter)) return 0.57;
  if ('mwMW%@→½…'.includes(letter)) return 0.98;
  if (letter >= 'A' && letter <= 'Z') return 0.79;
  return 0.6;
}
