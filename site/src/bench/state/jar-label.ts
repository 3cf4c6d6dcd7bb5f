import type { PlanDocument } from 'vitrose';
import { ingredientName } from 'vitrose/words';
import type { Manner } from './read/types.js';

/** What the sweets are made of, the heaviest first, each once. */
export function jarIngredients(plan: PlanDocument, manner: Manner): readonly string[] {
  const grams = new Map<string, number>();
  for (const { ingredient, massG } of plan.formula) {
    // Water boils away; the little that is left is not an ingredient.
    if (ingredient === 'water') continue;
    const name = ingredientName(ingredient, manner);
    grams.set(name, (grams.get(name) ?? 0) + massG.value);
  }
  return [...grams].sort(([, one], [, other]) => other - one).map(([name]) => name);
}
