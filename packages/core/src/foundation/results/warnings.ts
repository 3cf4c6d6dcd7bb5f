import type { ModelWarning } from './types.js';

/** Joins the warnings of several models; one about the same thing, saying the same, appears once. */
export function joinWarnings(
  ...lists: readonly (readonly ModelWarning[])[]
): readonly ModelWarning[] {
  const joined: ModelWarning[] = [];
  for (const list of lists) {
    for (const warning of list) {
      if (!joined.some((known) => isSame(known, warning))) joined.push(warning);
    }
  }
  return joined;
}

function isSame(a: ModelWarning, b: ModelWarning): boolean {
  return (
    a.code === b.code &&
    a.parameter === b.parameter &&
    a.value === b.value &&
    a.subject === b.subject
  );
}
