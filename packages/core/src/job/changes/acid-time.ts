import { findIngredient } from '../../matter/ingredients/ingredient.js';
import type { BatchDocument } from '../batch/types.js';
import type { ChangesOf } from './types.js';

/**
 * The same batch with all of its acid in at the first boil, or all of it off the heat.
 *
 * Lay the two plans side by side to see what early acid does: it inverts the sugar while it boils,
 * and the sweet is softer. Cream of tartar stays where it is; it is meant to work in the boil.
 *
 * @param batch - As `readBatch` of `vitrose/documents` returns it.
 * @param when - `first-boil` or `off-heat`.
 * @returns the changes, or `none`: `no-acid`, `already-so`.
 * @example
 * const batch = {
 *   format: 'vitrose.batch/1' as const,
 *   formula: [{ ingredient: 'sucrose', massG: 200 }, { ingredient: 'citric-acid', massG: 2 }],
 *   cook: { toSeaLevelC: 148 },
 * };
 * const answer = acidTime(batch, 'off-heat');
 * answer.kind === 'changes' ? answer.changes[0]?.path : '' // '/formula/1/when'
 */
export function acidTime(batch: BatchDocument, when: 'first-boil' | 'off-heat'): ChangesOf {
  const acids = batch.formula.flatMap((line, index) =>
    isAcid(batch, line.ingredient) ? [{ line, index }] : [],
  );
  if (acids.length === 0) return { kind: 'none', reason: 'no-acid' };
  const changes = acids
    .filter(({ line }) => (line.when ?? 'start') !== when)
    .map(({ index }) => ({ path: `/formula/${index}/when`, value: when }));
  return changes.length === 0
    ? { kind: 'none', reason: 'already-so' }
    : { kind: 'changes', changes };
}

function isAcid({ ingredients = {} }: BatchDocument, id: string): boolean {
  if (id === 'cream-of-tartar') return false;
  const own = Object.hasOwn(ingredients, id) ? ingredients[id] : undefined;
  return (own?.kind ?? findIngredient(id)?.kind) === 'acid';
}
