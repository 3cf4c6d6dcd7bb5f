import type { SourceId } from '../../sources/ids.js';

/**
 * How well a constant is known.
 *
 * `primary`: the publication itself was read. `secondary`: quoted elsewhere. `practice`: trade
 * lore, no citation. `memory`: recalled and not found again. `derived`: fitted, computed or
 * defined here. `assumed`: a guess that is named as one.
 */
export type Grade = 'primary' | 'secondary' | 'practice' | 'memory' | 'derived' | 'assumed';

/** One constant with its pedigree. The unit is in the key it stands under. */
export type Cited = {
  readonly value: number;
  readonly source: SourceId;
  readonly grade: Grade;
  /** Where in the source. */
  readonly locator?: string;
  /** What a reader would otherwise trip over. */
  readonly note?: string;
};

/** The constants of one model. */
export type CitedConstants = Readonly<Record<string, Cited>>;

/** A constant with the range it is found in. */
export type CitedRange = Cited & { readonly low?: number; readonly high?: number };
