import type { Advice, AdviceCode, Change, Remedy, Severity } from '../../job/advice/types.js';
import { ingredientName } from '../names/ingredients.js';
import { stageName } from '../stages/stage-name.js';
import { capitalised, type Facts, fill, fillAll } from '../text/fill.js';
import type { AdviceWords, DisplayOptions } from '../types.js';
import { ADVICE_WORDS, SEVERITY_WORDS } from './advice-words.js';
import { REMEDY_WORDS } from './remedy-words.js';

/** A remedy by its button. */
export type RemedyLabel = {
  /** Stable code of the remedy. */
  readonly code: string;
  /** What the button says. */
  readonly label: string;
};

/** One advice, ready to read. */
export type ExplainedAdvice = {
  /** Stable code. */
  readonly code: AdviceCode;
  /** How bad it is, in a few words. */
  readonly severity: string;
  /** Stands alone, without a full stop. */
  readonly title: string;
  /** The numbers behind it, in sentences; empty where none were given. */
  readonly text: string;
  /** The label of each remedy's button, in the order of the plan. */
  readonly remedies: readonly RemedyLabel[];
};

/**
 * An advice of a plan in sentences, with the labels of its remedies.
 *
 * A sentence whose number the advice does not carry is left out.
 *
 * @param advice - From `plan.advice`.
 * @param options - Units, region and locale.
 * @returns severity, title, text and remedies.
 * @example
 * explainAdvice({ code: 'pieces-short', severity: 'note', numbers: { pieces: 56, wished: 60 }, remedies: [] }).text
 * // 'It makes 56; you wished for 60.'
 */
export function explainAdvice(advice: Advice, options: DisplayOptions = {}): ExplainedAdvice {
  return explainOnPage(advice, options);
}

/** The same, with figures as the page already shows them in place of the advice's own. */
export function explainOnPage(
  advice: Advice,
  options: DisplayOptions,
  shown: Readonly<Record<string, string>> = {},
): ExplainedAdvice {
  const words: AdviceWords = ADVICE_WORDS[advice.code];
  const facts = factsOf(advice, options, shown);
  return {
    code: advice.code,
    severity: severityWord(advice.severity),
    title: fill(words.titles?.[advice.severity] ?? words.title, facts, options) ?? '',
    text: fillAll(words.texts?.[advice.severity] ?? words.text, facts, options),
    remedies: advice.remedies.map((remedy) => ({
      code: remedy.code,
      label: remedyLabel(remedy, options),
    })),
  };
}

/**
 * The label of a remedy's button: what will change.
 *
 * @param remedy - From an advice or a problem.
 * @param options - Units, region and locale.
 * @returns the label, with the number where the remedy makes only one change or says its numbers.
 * @example
 * remedyLabel({ code: 'more-moulds', changes: [{ path: '/mould/moulds', value: 4 }] }) // 'Take 4 moulds'
 */
export function remedyLabel(remedy: Remedy, options: DisplayOptions = {}): string {
  const sentence = Object.hasOwn(REMEDY_WORDS, remedy.code) ? REMEDY_WORDS[remedy.code] : '';
  const numbers = { ...numbersOfOnlyChange(remedy), ...remedy.numbers };
  const store = remedy.changes.length > 0 && remedy.changes.every(isOfStore);
  const names = store ? { store: 'store' } : {};
  // The codes were chosen to be readable: what a code says stands where its number is not known.
  return (
    fill(sentence, { numbers, names }, options) || capitalised(remedy.code.replaceAll('-', ' '))
  );
}

/**
 * How bad it is, in a few words.
 *
 * @example
 * severityWord('may-disappoint') // 'May disappoint'
 */
export function severityWord(severity: Severity): string {
  return SEVERITY_WORDS[severity];
}

/** The first thing that can be said about an advice, where there is room for no more. */
export function leadingSentence(
  advice: Advice,
  options: DisplayOptions,
  shown: Readonly<Record<string, string>>,
): string {
  const { text } = ADVICE_WORDS[advice.code];
  return fillAll(text.slice(0, 1), factsOf(advice, options, shown), options);
}

function factsOf(
  advice: Advice,
  options: DisplayOptions,
  shown: Readonly<Record<string, string>>,
): Facts {
  const names = { ...spokenNames(advice.names ?? {}, options), ...shown };
  return { numbers: advice.numbers, names };
}

/** Ids become names. */
function spokenNames(
  names: Readonly<Record<string, string>>,
  options: DisplayOptions,
): Record<string, string> {
  const spoken: Record<string, string> = {};
  for (const [key, id] of Object.entries(names)) {
    if (key === 'stage') spoken[key] = stageName(id, options);
    else if (key === 'where') spoken[key] = WHERE_IT_GRAINS[id as keyof typeof WHERE_IT_GRAINS];
    else spoken[key] = key === 'place' ? id : ingredientName(id, options);
  }
  return spoken;
}

/** Where a mass grains. */
const WHERE_IT_GRAINS = {
  process: 'while you work it',
  wrapped: 'in the store, wrapped',
  open: 'bare in the air of the store',
} as const;

function isOfStore({ path }: Change): boolean {
  return path.startsWith('/store/');
}

/** A remedy that changes one number says it; with several changes no single number is the message. */
function numbersOfOnlyChange({ changes }: Remedy): Record<string, number> {
  const [change] = changes;
  const key = change?.path.split('/').pop();
  return changes.length === 1 && key !== undefined && typeof change?.value === 'number'
    ? { [key]: change.value }
    : {};
}
