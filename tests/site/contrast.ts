/** WCAG contrast of two colours written as six hexadecimal digits. */
export function contrast(one: string, other: string): number {
  const [low, high] = [luminance(one), luminance(other)].sort((a, b) => a - b) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

function luminance(colour: string): number {
  const digits = /^#([0-9a-f]{2})([0-9a-f]{2})([0-9a-f]{2})$/i.exec(colour);
  if (digits === null) throw new Error(`${colour} is no colour of six digits.`);
  const [red, green, blue] = digits.slice(1).map((pair) => {
    const share = Number.parseInt(pair, 16) / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

/** A block of the stylesheet: the rules it stands under, and its custom properties. */
export type Block = { readonly under: string; readonly tokens: Readonly<Record<string, string>> };

/** Every block of a stylesheet that sets custom properties, with its selector and media query. */
export function blocksOf(css: string): readonly Block[] {
  const blocks: Block[] = [];
  const open: string[] = [];
  let text = '';
  for (const sign of css.replace(/\/\*[\s\S]*?\*\//g, '')) {
    if (sign === '{') {
      open.push(text.trim().replace(/\s+/g, ' '));
      text = '';
    } else if (sign === '}') {
      const tokens = Object.fromEntries(
        [...text.matchAll(/(--[\w-]+):\s*([^;]+);/g)].map(([, name, value]) => [
          name,
          value?.trim(),
        ]),
      );
      if (Object.keys(tokens).length > 0) blocks.push({ under: open.join(' '), tokens });
      open.pop();
      text = '';
    } else {
      text += sign;
    }
  }
  return blocks;
}
