/** A number at the head of a text, and what follows it. */
export type ReadNumber = {
  /** What it can mean, the likelier first: `1,500` is a thousand and a half, or one and a half. */
  readonly values: readonly [number, ...number[]];
  /** Exactly as typed. */
  readonly written: string;
  /** What follows, trimmed. */
  readonly rest: string;
};

const FRACTIONS: Readonly<Record<string, number>> = {
  '¼': 1 / 4,
  '½': 1 / 2,
  '¾': 3 / 4,
  '⅓': 1 / 3,
  '⅔': 2 / 3,
  '⅛': 1 / 8,
  '⅜': 3 / 8,
  '⅝': 5 / 8,
  '⅞': 7 / 8,
};

/** Spaces that keep thousands apart, the narrow and the unbreakable among them. */
const GAP = '[ \\u00a0\\u2009\\u202f]';
const SIGN = '([-−+]?)';

/**
 * Reads a number as people type it: `95,8`, `95.8`, `½`, `1½`, `1 1/2`, `1 500`, `1,500`.
 *
 * @returns nothing where the text does not begin with a number.
 */
export function readNumber(text: string): ReadNumber | undefined {
  return vulgar(text.trim()) ?? decimal(text.trim());
}

function vulgar(text: string): ReadNumber | undefined {
  const signs = Object.keys(FRACTIONS).join('');
  const single = new RegExp(`^${SIGN}(?:(\\d+)${GAP}*)?([${signs}])`).exec(text);
  const slashed = new RegExp(`^${SIGN}(?:(\\d+)(?:${GAP}+|-))?(\\d+)[/⁄](\\d+)`).exec(text);
  const found = single ?? slashed;
  if (found === null) return undefined;
  const [written, sign = '', whole = '0', top = '', bottom] = found;
  const part = bottom === undefined ? (FRACTIONS[top] ?? 0) : Number(top) / Number(bottom);
  if (!Number.isFinite(part)) return undefined;
  return answer([signed(sign, Number(whole) + part)], written, text);
}

function decimal(text: string): ReadNumber | undefined {
  const found = new RegExp(
    `^${SIGN}(\\d{1,3}(?:${GAP}\\d{3})+(?!\\d)(?:[.,]\\d+)?|\\d+(?:[.,']\\d+)*|[.,]\\d+)`,
  ).exec(text);
  if (found === null) return undefined;
  const [written, sign = '', digits = ''] = found;
  const plain = digits.replace(/[\s']/g, '');
  const values = meanings(plain).map((value) => signed(sign, value));
  const [first, ...others] = values;
  // What is left of a fraction that is none, such as 1/0.
  if (/^\s*[/⁄]/.test(text.slice(written.length))) return undefined;
  return first === undefined ? undefined : answer([first, ...others], written, text);
}

/** One mark can be a decimal mark or keep thousands apart; two kinds say it themselves. */
function meanings(digits: string): readonly number[] {
  const marks = [...digits].filter((sign) => sign === '.' || sign === ',');
  const last = marks.at(-1);
  if (last === undefined) return [Number(digits)];
  const kinds = new Set(marks);
  const asThousands = Number(digits.replace(/[.,]/g, ''));
  if (kinds.size === 2) {
    const other = last === '.' ? ',' : '.';
    const one = digits.replaceAll(other, '').replace(last, '.');
    return Number.isNaN(Number(one)) ? [] : [Number(one)];
  }
  const grouped = /^\d{1,3}([.,]\d{3})+$/.test(digits);
  if (marks.length > 1) return grouped ? [asThousands] : [];
  const asDecimal = Number(digits.replace(',', '.'));
  // A point with three digits after it is a decimal point in English; a comma may be either.
  return grouped && last === ',' && !digits.startsWith('0')
    ? [asThousands, asDecimal]
    : [asDecimal];
}

function signed(sign: string, value: number): number {
  return sign === '-' || sign === '−' ? -value : value;
}

function answer(values: ReadNumber['values'], written: string, text: string): ReadNumber {
  return { values, written, rest: text.slice(written.length).trim() };
}
