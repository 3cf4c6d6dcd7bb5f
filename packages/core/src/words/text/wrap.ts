/** Columns of a terminal page. */
export const PAGE_COLUMNS = 78;

/**
 * Breaks a line so that it fits, at spaces only, never between a number and its unit.
 *
 * @param line - One line; spaces inside a line that fits are kept, so that tables stay tables.
 * @param hanging - Columns every line after the first is moved in.
 */
export function wrap(line: string, hanging = 0, columns = PAGE_COLUMNS): readonly string[] {
  if (line.length <= columns) return [line];
  const lead = /^ */.exec(line)?.[0] ?? '';
  const words = glued(line.slice(lead.length)).split(' ');
  const lines: string[] = [];
  let current = lead + (words[0] ?? '');
  for (const word of words.slice(1)) {
    if (current.length + 1 + word.length > columns) {
      lines.push(current);
      current = ' '.repeat(hanging) + word;
    } else {
      current += ` ${word}`;
    }
  }
  return [...lines, current].map((text) => text.replaceAll('\u00a0', ' '));
}

/** Ties number to unit, and the groups of a long number to each other, with no-break spaces. */
function glued(text: string): string {
  return text
    .replace(/(\d) (?=\d{3}(?!\d))/g, '$1\u00a0')
    .replace(/(\d) (?=(?:°C|°F|%|g|kg|oz|lb|ml|mm|cm|in|qt|hPa|inHg|m|W)(?![a-z]))/g, '$1\u00a0');
}
