/**
 * Where a text stops being JSON: the index of the first sign that cannot stand there, or the
 * length of a text that breaks off. `undefined` when the text is JSON.
 *
 * The engines' own messages differ and some name no place. Nesting must be capped beforehand.
 */
export function jsonFault(text: string): number | undefined {
  let at = 0;

  const skip = (pattern: RegExp): boolean => {
    pattern.lastIndex = at;
    const found = pattern.exec(text)?.[0];
    at += found?.length ?? 0;
    return found !== undefined;
  };
  const space = (): boolean => skip(/[ \t\n\r]*/y);
  const sign = (wanted: string): boolean => {
    if (text[at] !== wanted) return false;
    at++;
    return space();
  };
  const string = (): boolean =>
    // biome-ignore lint/suspicious/noControlCharactersInRegex: JSON forbids just these in a string.
    skip(/"(?:[^"\\\u0000-\u001f]|\\(?:["\\/bfnrt]|u[\da-fA-F]{4}))*/y) && sign('"');
  const list = (item: () => boolean, end: string): boolean => {
    if (sign(end)) return true;
    do if (!item()) return false;
    while (sign(','));
    return sign(end);
  };
  const value = (): boolean => {
    if (text[at] === '"') return string();
    if (sign('[')) return list(value, ']');
    if (sign('{')) return list(() => string() && sign(':') && value(), '}');
    const plain = /true|false|null|-?(?:0|[1-9]\d*)(?:\.\d+)?(?:[eE][+-]?\d+)?/y;
    return skip(plain) && space();
  };

  return space() && value() && at === text.length ? undefined : at;
}

/** Line and column of a place in a text, both counted from 1. */
export function lineAndColumn(text: string, at: number): { line: number; column: number } {
  const before = text.slice(0, at).split(/\r\n|\n|\r/);
  return { line: before.length, column: (before.at(-1) ?? '').length + 1 };
}
