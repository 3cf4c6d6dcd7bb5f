import { REGION_WORDS } from '../names/region-words.js';
import type { DisplayOptions, Sentence } from '../types.js';
import { formatByKey } from '../units/by-key.js';
import { isUs, spelled } from './region.js';

/** What the braces of a sentence can be filled with. */
export type Facts = {
  readonly numbers?: Readonly<Record<string, number>> | undefined;
  /** Words and names, ready to read. */
  readonly names?: Readonly<Record<string, string>> | undefined;
};

/** The sentence with its numbers and names; undefined where one it needs is not known. */
export function fill(
  sentence: Sentence,
  facts: Facts = {},
  options: DisplayOptions = {},
): string | undefined {
  for (const alternative of spelled(sentence, options).split(' | ')) {
    const filled = fillOne(alternative, facts, options);
    if (filled !== undefined) return capitalised(filled);
  }
  return undefined;
}

/** Sentences joined to a paragraph, without those whose numbers are not known. */
export function fillAll(
  sentences: readonly Sentence[],
  facts: Facts = {},
  options: DisplayOptions = {},
): string {
  return sentences
    .map((sentence) => fill(sentence, facts, options))
    .filter((sentence) => sentence !== undefined)
    .join(' ');
}

/** With a capital at its head. */
export function capitalised(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** `a, b and c`, or with another last word. */
export function listed(words: readonly string[], last = 'and'): string {
  return words.length < 2
    ? (words[0] ?? '')
    : `${words.slice(0, -1).join(', ')} ${last} ${words[words.length - 1]}`;
}

function fillOne(sentence: string, facts: Facts, options: DisplayOptions): string | undefined {
  let complete = true;
  const filled = sentence.replace(/\{([^}]+)\}/g, (_, token: string) => {
    const word = wordFor(token, facts, options);
    if (word === undefined) complete = false;
    return word ?? '';
  });
  return complete ? filled : undefined;
}

function wordFor(token: string, facts: Facts, options: DisplayOptions): string | undefined {
  const name = facts.names?.[token];
  if (name !== undefined) return name;
  const number = facts.numbers?.[token];
  if (number !== undefined)
    return Number.isFinite(number) ? formatByKey(token, number, options) : undefined;
  const fixed = /^(\d+(?:\.\d+)?)([A-Z]\w*)$/.exec(token);
  if (fixed !== null) return formatByKey(fixed[2] ?? '', Number(fixed[1]), options);
  return REGION_WORDS[token as keyof typeof REGION_WORDS]?.[isUs(options) ? 1 : 0];
}
