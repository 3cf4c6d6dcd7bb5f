import { type Box, labelBox } from '../labels/place-labels.js';

/** A line of text as it stands in a drawing. */
export type DrawnText = { readonly text: string; readonly sizePx: number; readonly box: Box };

const TAG = /<(\/?)(g|text|tspan)\b([^>]*)>([^<]*)/g;

/** Every line of text in rendered SVG, with the box it takes; groups may be moved. */
export function drawnTexts(svg: string): readonly DrawnText[] {
  const found: DrawnText[] = [];
  const moved: (readonly [number, number])[] = [[0, 0]];
  let outer: Readonly<Record<string, string>> = {};
  for (const [, closing, name, rest = '', content = ''] of svg.matchAll(TAG)) {
    const own = attributes(rest);
    if (name === 'g') {
      if (closing === '/') moved.pop();
      else moved.push(added(moved.at(-1) ?? [0, 0], own.transform));
      continue;
    }
    if (closing === '/') continue;
    if (name === 'text') outer = own;
    if (content.trim() === '') continue;
    const all = { ...outer, ...own };
    const [dx, dy] = moved.at(-1) ?? [0, 0];
    const sizePx = Number(all['font-size']);
    const anchor = (all['text-anchor'] ?? 'start') as 'start' | 'middle' | 'end';
    const at = [Number(all.x) + dx, Number(all.y) + dy] as const;
    const text = content.replaceAll('&amp;', '&');
    found.push({ text, sizePx, box: labelBox({ lines: [text], sizePx, anchor }, at) });
  }
  return found;
}

function attributes(text: string): Readonly<Record<string, string>> {
  return Object.fromEntries(
    [...text.matchAll(/([\w-]+)="([^"]*)"/g)].map(([, key = '', value = '']) => [key, value]),
  );
}

function added(
  [x, y]: readonly [number, number],
  transform: string | undefined,
): readonly [number, number] {
  const [dx = 0, dy = 0] = (transform?.match(/-?[\d.]+/g) ?? []).map(Number);
  return [x + dx, y + dy];
}
