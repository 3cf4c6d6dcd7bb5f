import type { SourceId } from '../../sources/ids.js';
import type { Grade } from '../validity/constants.js';

/** Where a row of constants comes from that stand on one page and share its pedigree. */
export type Pedigree = {
  readonly source: SourceId;
  readonly grade: Grade;
  readonly locator?: string;
};
