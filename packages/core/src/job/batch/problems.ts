import type { Remedy } from '../advice/types.js';

/** Why a batch cannot be. Codes are stable; sentences stand in `vitrose/words`. */
export type ProblemCode =
  | 'not-json'
  | 'too-large'
  | 'too-deep'
  | 'too-many-lines'
  | 'hostile-key'
  | 'wrong-format'
  | 'newer-format'
  | 'missing'
  | 'wrong-type'
  | 'unknown-field'
  | 'unknown-name'
  | 'one-of'
  | 'name-taken'
  | 'not-a-number'
  | 'outside-range'
  | 'not-whole'
  | 'perhaps-a-percentage'
  | 'perhaps-fahrenheit'
  | 'shares-do-not-sum'
  | 'shares-need-a-size'
  | 'share-of-nothing'
  | 'circular-share'
  | 'only-water'
  | 'only-starch-syrup'
  | 'no-weight-for-measure'
  | 'which-dram'
  | 'which-unit'
  | 'nothing-to-cook'
  | 'no-water'
  | 'two-cavity-sizes'
  | 'piece-without-size'
  | 'below-first-boil'
  | 'already-drier'
  | 'off-scale-dry'
  | 'vacuum-deeper-than-air'
  | 'equal-readings'
  | 'readings-disagree'
  | 'late-water-exceeds-target'
  | 'beyond-the-knee'
  | 'glass-point-out-of-reach'
  | 'stage-leaves-it-soft';

/** One thing that stands in the way, with its place in the document. */
export type Problem = {
  readonly code: ProblemCode;
  /** JSON Pointer into the document: `/formula/0/massG`. Empty for the whole. */
  readonly path: string;
  /** What stands there. */
  readonly received?: unknown;
  /** What would be possible, in the unit of the field. */
  readonly limits?: readonly [low: number, high: number] | undefined;
  /** Names that would be understood: the nearest known one, the fields to choose from. */
  readonly known?: readonly string[] | undefined;
  /** A second place that has to do with it. */
  readonly also?: string | undefined;
  /** Numbers a sentence about it needs, each under a unit-named key. */
  readonly numbers?: Readonly<Record<string, number>> | undefined;
  /** Changes of the document that would remove it. */
  readonly remedies?: readonly Remedy[] | undefined;
};
