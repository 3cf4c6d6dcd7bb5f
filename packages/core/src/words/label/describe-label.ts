import type { DoseTest, LabelStatement, LabelTest } from '../../models/nutrition/types.js';
import { speciesName } from '../names/species.js';
import { fill } from '../text/fill.js';
import type { DisplayOptions } from '../types.js';
import { formatByKey } from '../units/by-key.js';
import { formatNumber } from '../units/number.js';
import {
  ANALYSIS_REASONS,
  CLAIM_NAMES,
  CLAIM_PORTIONS,
  CLAIM_QUANTITIES,
  CLAIM_SENTENCES,
  LABEL_NOTE,
  STATEMENT_WORDS,
} from './label-words.js';

/** A label in sentences. */
export type DescribedLabel = {
  /** One for each claim tested. */
  readonly claims: readonly string[];
  /** What the rules ask to be said. */
  readonly statements: readonly string[];
  /** One for each substance with a legal limit. */
  readonly doses: readonly string[];
  /** Stands under every label. */
  readonly note: string;
};

/**
 * What a label may claim and must say, in sentences.
 *
 * Every claim is told as a test with its figure and its limit; `note` belongs under them always.
 *
 * @param label - The answer of `nutrition`.
 * @param options - Region and locale.
 * @returns sentences for claims, statements and doses, and the note that sends to the authority.
 * @example
 * describeLabel({ claims: [], statements: [], doses: [] }).claims.length // 0
 */
export function describeLabel(
  label: {
    readonly claims: readonly LabelTest[];
    readonly statements: readonly LabelStatement[];
    readonly doses: readonly DoseTest[];
  },
  options: DisplayOptions = {},
): DescribedLabel {
  return {
    claims: label.claims.map((claim) => claimSentence(claim, options)),
    statements: label.statements.map((statement) => statementSentence(statement, options)),
    doses: label.doses.map((dose) => doseSentence(dose, options)),
    note: fill(LABEL_NOTE, {}, options) ?? LABEL_NOTE,
  };
}

function claimSentence(claim: LabelTest, options: DisplayOptions): string {
  const because =
    claim.because === undefined ? '' : (fill(ANALYSIS_REASONS[claim.because], {}, options) ?? '');
  const names = {
    claim: CLAIM_NAMES[claim.id],
    facts: claimFacts(claim, options),
    because: `${because.charAt(0).toLowerCase()}${because.slice(1)}`,
  };
  return fill(CLAIM_SENTENCES[claim.kind], { names }, options) ?? '';
}

const PASSES = { below: 'must be below', 'at-most': 'at most', 'at-least': 'at least' } as const;

/** `sugars, g in 100 g: 0.3, at most 0.5`. */
function claimFacts(claim: LabelTest, options: DisplayOptions): string {
  const { quantity, per, value, passes, limit } = claim;
  const isShare = quantity.endsWith('Share');
  const shown = (of: number) =>
    isShare ? formatByKey('share', of, options) : formatNumber(of, of < 10 ? 2 : 0, options);
  const portion = isShare ? '' : ` ${CLAIM_PORTIONS[per]}`;
  return `${CLAIM_QUANTITIES[quantity]}${portion}: ${shown(value)}, ${PASSES[passes]} ${shown(limit)}`;
}

function statementSentence({ id, subject, numbers }: LabelStatement, options: DisplayOptions) {
  const names = subject === undefined ? {} : { subject: speciesName(subject) };
  return fill(STATEMENT_WORDS[id], { numbers, names }, options) ?? '';
}

function doseSentence(dose: DoseTest, options: DisplayOptions): string {
  const share = (of: number) => `${formatNumber(of * 100, of < 0.01 ? 3 : 1, options)} %`;
  const sentence =
    dose.kind === 'over'
      ? '{subject}: {holds}, over the limit of {limit} these rules name.'
      : '{subject}: {holds}; these rules name a limit of {limit}.';
  const names = {
    subject: speciesName(dose.species),
    holds: share(dose.massFraction),
    limit: share(dose.limitMassFraction),
  };
  return fill(sentence, { names }, options) ?? '';
}
