import { requiredNames, shapesUnder, wordsOf } from '../shape/look-at.js';
import type { Fields } from '../shape/types.js';

type Held = Readonly<Record<string, unknown>>;

/** Which of several shapes an object has, judged by the keys it holds. */
export type Choice = {
  /** The branch that was chosen, or all of them where none was. */
  readonly branches: readonly Fields[];
  /** The key that decided. */
  readonly by?: string | undefined;
  /** Set when the keys speak for no branch or for several. */
  readonly undecided?: Undecided | undefined;
};

/** The deciding keys that are there, and those there could be. */
export type Undecided = { readonly present: readonly string[]; readonly known: readonly string[] };

/** Finds the branch. One branch is no choice. */
export function chooseBranch(branches: readonly Fields[], held: Held): Choice {
  if (branches.length === 1) return { branches };
  const [tag] = requiredEverywhere(branches).filter((key) =>
    branches.every((branch) => wordsUnder(branch, key).length > 0),
  );
  return tag === undefined ? chooseByKeys(branches, held) : chooseByTag(branches, held, tag);
}

/** The keys that must be there whichever branch is meant. */
export function requiredEverywhere(branches: readonly Fields[]): readonly string[] {
  const [first, ...others] = branches.map(requiredNames);
  return (first ?? []).filter((key) => others.every((keys) => keys.includes(key)));
}

/** `kind: 'timed'` decides, where every branch has its own words for one key. */
function chooseByTag(branches: readonly Fields[], held: Held, tag: string): Choice {
  const word = held[tag];
  const chosen = branches.filter(
    (branch) => typeof word === 'string' && wordsUnder(branch, tag).includes(word),
  );
  return chosen.length === 0 ? { branches } : { branches: chosen, by: tag };
}

/** The keys present decide, where each branch must have keys of its own. */
function chooseByKeys(branches: readonly Fields[], held: Held): Choice {
  const shared = requiredEverywhere(branches);
  const own = (branch: Fields): readonly string[] =>
    requiredNames(branch).filter((key) => !shared.includes(key));
  const known = [...new Set(branches.flatMap(own))];
  const present = known.filter((key) => Object.hasOwn(held, key));
  const [chosen] = branches
    .filter((branch) => present.length > 0 && present.every((key) => own(branch).includes(key)))
    // Of two that fit, the one with less to be missed: an elevation alone is enough.
    .sort((a, b) => own(a).length - own(b).length);
  return chosen === undefined
    ? { branches, undecided: { present, known } }
    : { branches: [chosen], by: present[0] };
}

function wordsUnder(branch: Fields, key: string): readonly string[] {
  return shapesUnder([branch], key).flatMap(wordsOf);
}
