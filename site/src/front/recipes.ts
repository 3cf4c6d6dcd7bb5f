import type { BatchDocument, FormulaLine } from 'vitrose';
import type { FRONT_RECIPE_NAMES } from '../words/front.js';

/** What the front page can make. */
export type FrontRecipeId = keyof typeof FRONT_RECIPE_NAMES;

/** Batches the front page asks about: amounts in grams, no kitchen of their own. */
export const FRONT_RECIPES: Readonly<Record<FrontRecipeId, BatchDocument>> = {
  'lemon-drops': {
    format: 'vitrose.batch/1',
    formula: [
      { ingredient: 'sucrose', massG: 232 },
      driedSyrup(155),
      { ingredient: 'water', massG: 116 },
      { ingredient: 'citric-acid', massG: 5, when: 'off-heat' },
    ],
    cook: { toSeaLevelC: 148 },
    room: { temperatureC: 24 },
  },
  lollipops: {
    format: 'vitrose.batch/1',
    formula: [
      { ingredient: 'sucrose', massG: 600 },
      driedSyrup(417),
      { ingredient: 'water', massG: 290 },
      { ingredient: 'flavour-oil', massG: 2.5, when: 'off-heat' },
    ],
    cook: { toMoistureMassFraction: 0.02 },
  },
  'aniseed-drops': {
    format: 'vitrose.batch/1',
    formula: [
      { ingredient: 'sucrose', massG: 500 },
      { ingredient: 'glucose-syrup', dextroseEquivalent: 40, massG: 330 },
      { ingredient: 'water', massG: 165 },
      { ingredient: 'flavour-oil', massG: 1.5, when: 'off-heat' },
    ],
    cook: { toSeaLevelC: 150 },
  },
  fondant: {
    format: 'vitrose.batch/1',
    formula: [
      { ingredient: 'sucrose', massG: 500 },
      { ingredient: 'glucose-syrup', dextroseEquivalent: 42, massG: 75 },
      { ingredient: 'water', massG: 150 },
    ],
    cook: { toStage: 'soft-ball' },
  },
};

function driedSyrup(massG: number): FormulaLine {
  return {
    ingredient: 'dried-glucose-syrup',
    dextroseEquivalent: 42,
    drySolidsMassFraction: 0.96,
    massG,
  };
}
