import type { Grade } from '../../../foundation/validity/constants.js';

/** What a step asks the hand to do. Sentences stand in `vitrose/words`. */
export type StepId =
  | 'weigh'
  | 'weigh-empty-pan'
  | 'make-syrup'
  | 'dissolve'
  | 'wash-walls'
  | 'boil'
  | 'add-hot'
  | 'turn-down'
  | 'stop'
  | 'weigh-pan'
  | 'rest'
  | 'colour'
  | 'flavour'
  | 'acid'
  | 'other-late'
  | 'pour'
  | 'score'
  | 'set'
  | 'wrap'
  | 'store'
  | 'give';

/** One step, in order. */
export type PlannedStep = {
  readonly id: StepId;
  /** Paths of the formula lines that are handled in it. */
  readonly lines: readonly string[];
  readonly numbers: Readonly<Record<string, number>>;
  /** Caution ids that belong to the moment. */
  readonly cautions: readonly CautionId[];
};

/** When a caution matters. */
export type Moment = 'buying' | 'weighing' | 'hot' | 'pouring' | 'giving' | 'storing';

/** Every caution the library knows; the words stand in `vitrose/words`. */
export type CautionId =
  | 'hot-sugar'
  | 'burn-first-aid'
  | 'never-water-on-hot-mass'
  | 'late-liquids'
  | 'alcohol-flavour'
  | 'glycol-flavour-vapour'
  | 'strong-oils'
  | 'acid-powder'
  | 'sour-teeth'
  | 'above-165'
  | 'no-glass-thermometer'
  | 'weighing-hot-pan'
  | 'pan-a-third-full'
  | 'vacuum-vessels'
  | 'mould-heat'
  | 'unattended'
  | 'dogs-xylitol'
  | 'choking'
  | 'laxative'
  | 'polyol-child'
  | 'fructose-intolerance'
  | 'phenylalanine'
  | 'sweetener-heat'
  | 'sweetener-daily-limits'
  | 'honey-under-one'
  | 'allergens'
  | 'limits-are-local'
  | 'not-for-illness'
  | 'acid-in-isomalt'
  | 'bicarbonate-foams';

/** A caution of this plan, and whether it stands at the top. */
export type PlannedCaution = {
  readonly id: CautionId;
  readonly moment: Moment;
  /** One of the at most three that can do the most harm here. */
  readonly atTop: boolean;
  readonly numbers: Readonly<Record<string, number>>;
};

/** A default the plan took because the document says nothing. */
export type TakenDefault = {
  /** Where the field would stand. */
  readonly path: string;
  readonly value: number | string | boolean;
  readonly low?: number | undefined;
  readonly high?: number | undefined;
  readonly grade: Grade;
};
