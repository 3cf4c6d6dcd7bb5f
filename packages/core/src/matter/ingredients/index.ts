export { INGREDIENT_IDS } from './ids.js';
export { ingredient } from './ingredient.js';
export type { Ingredient, IngredientId, IngredientKind } from './types.js';
