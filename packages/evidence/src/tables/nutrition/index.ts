import { nutritionAcidsFlavourColourTable } from './nutrition-acids-flavour-colour.js';
import { nutritionCautionsTable } from './nutrition-cautions.js';
import { nutritionEnergyFactorsTable } from './nutrition-energy-factors.js';
import { nutritionGiTable } from './nutrition-gi.js';
import { nutritionLabelRulesTable } from './nutrition-label-rules.js';
import { nutritionPolyolToleranceTable } from './nutrition-polyol-tolerance.js';

export {
  nutritionAcidsFlavourColourTable,
  nutritionCautionsTable,
  nutritionEnergyFactorsTable,
  nutritionGiTable,
  nutritionLabelRulesTable,
  nutritionPolyolToleranceTable,
};

/** Every table of this family. */
export const NUTRITION_TABLES = [
  nutritionAcidsFlavourColourTable,
  nutritionCautionsTable,
  nutritionEnergyFactorsTable,
  nutritionGiTable,
  nutritionLabelRulesTable,
  nutritionPolyolToleranceTable,
] as const;
