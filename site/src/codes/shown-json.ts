import { CODE_WORDS } from '../words/codes.js';

/** Longer than this a document is a wall. */
const LONGEST = 2_400;

const DEEPEST_INDENT = 20;

/** A document as a page shows it; a text that is no JSON as it stands. */
export function shownJson(document: unknown): string {
  const text = typeof document === 'string' ? document : JSON.stringify(document, notANumber, 2);
  // Deeper than this the indent alone fills a phone.
  if (text.includes(' '.repeat(DEEPEST_INDENT))) return JSON.stringify(document, notANumber);
  return text.length > LONGEST ? CODE_WORDS.tooLong(text.length) : compact(text);
}

/** JSON has no NaN; what stood there should still be seen. */
function notANumber(_key: string, value: unknown): unknown {
  return typeof value === 'number' && Number.isNaN(value) ? 'NaN, not a number' : value;
}

/** Small objects on one line, as people write them. */
function compact(json: string): string {
  return json.replace(/\{\s+([^{}[\]]*?)\s+\}/g, (whole, inside: string) => {
    const line = `{ ${inside.replace(/\s*\n\s*/g, ' ')} }`;
    return line.length <= 64 ? line : whole;
  });
}
