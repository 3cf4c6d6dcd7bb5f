import type { None } from '../../foundation/results/types.js';
import type { Change } from '../advice/types.js';

/** Why a batch cannot be changed that way. */
export type NoChange =
  | 'no-acid'
  | 'already-so'
  | 'no-xylitol'
  | 'no-such-line'
  | 'not-a-starch-syrup'
  | 'too-little-water'
  | 'not-readable';

/** Changes of a batch that belong together, to be laid beside it or taken. */
export type ChangesOf =
  | { readonly kind: 'changes'; readonly changes: readonly Change[] }
  | None<NoChange>;
