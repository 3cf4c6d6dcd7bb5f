import { GRAMS_PER_ML } from './grams-per-ml.js';

/**
 * The forms a spoon measure of an ingredient can be given in, the usual one first.
 *
 * @param ingredient - Name of the ingredient.
 * @returns form names, or an empty list where the ingredient can only be weighed.
 * @example
 * measureForms('sucrose').join(', ') // 'granulated, confectioners-unsifted, brown-packed'
 * @source kitchen-weight-charts
 */
export function measureForms(ingredient: string): readonly string[] {
  const table: Readonly<Record<string, object>> = GRAMS_PER_ML;
  return Object.hasOwn(table, ingredient) ? Object.keys(table[ingredient] ?? {}) : [];
}
