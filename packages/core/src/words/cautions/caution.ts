import type { Grade } from '../../foundation/validity/constants.js';
import type { CautionId, Moment } from '../../job/plan/types.js';
import type { SourceId } from '../../sources/ids.js';
import { fill, fillAll } from '../text/fill.js';
import type { Catalogue, CautionWords, DisplayOptions } from '../types.js';
import { CAUTION_WORDS } from './caution-words.js';

/** One caution, ready to read. */
export type Caution = {
  /** The id it was asked for by. */
  readonly id: CautionId;
  /** The whole of it in one line. */
  readonly title: string;
  /** What can happen and what to do, in sentences. */
  readonly text: string;
  /** When the hand is there. */
  readonly moments: readonly Moment[];
  /** Who knows better: local law, a vet, a poison line, a physician. */
  readonly defer?: string | undefined;
  /** How well it is known. */
  readonly grade: Grade;
  /** Key of the bibliography, where one source stands behind it. */
  readonly source?: SourceId | undefined;
};

/**
 * What can hurt, and what to do about it.
 *
 * Information, never advice for one person or animal: `defer` says who to ask.
 *
 * @param id - A caution of a plan, or any of the known ones.
 * @param options - How numbers are shown; `numbers` are those the plan gives with the caution.
 * @returns title, text, the moments it belongs to, how well it is known.
 * @example
 * caution('never-water-on-hot-mass').title // 'Never pour water on hot sugar'
 */
export function caution(
  id: CautionId,
  options: DisplayOptions & {
    readonly numbers?: Readonly<Record<string, number>> | undefined;
  } = {},
): Caution {
  const words: CautionWords = CAUTION_WORDS[id];
  const facts = { numbers: options.numbers };
  return {
    id,
    title: fill(words.title, facts, options) ?? '',
    text: fillAll(words.text, facts, options),
    moments: words.moments,
    defer: words.defer,
    grade: words.grade,
    source: words.source,
  };
}

/** When a caution matters. */
const MOMENT_WORDS = {
  buying: 'When buying',
  weighing: 'When weighing',
  hot: 'While it is hot',
  pouring: 'When adding and pouring',
  giving: 'When giving',
  storing: 'When storing',
} as const satisfies Catalogue['moments'];

/**
 * When a caution matters, as the head of a list.
 *
 * @param moment - One of `caution(id).moments`.
 * @example
 * momentWord('giving') // 'When giving'
 */
export function momentWord(moment: Moment): string {
  return MOMENT_WORDS[moment];
}
