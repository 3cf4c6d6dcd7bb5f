/**
 * The way out: sentences, names, cautions and units for people, in English.
 *
 * @module words
 */

export type { ExplainedAdvice, RemedyLabel } from './advice/explain-advice.js';
export { explainAdvice, remedyLabel, severityWord } from './advice/explain-advice.js';
export type { Caution } from './cautions/caution.js';
export { caution, momentWord } from './cautions/caution.js';
export type { DescribedLabel } from './label/describe-label.js';
export { describeLabel } from './label/describe-label.js';
export { gradeWord } from './names/grades.js';
export { ingredientName } from './names/ingredients.js';
export { notTheSameAs } from './names/not-the-same.js';
export type { ShopName } from './names/shop-names.js';
export { shopName } from './names/shop-names.js';
export type { TakenAs } from './names/shop-notes.js';
export { speciesName } from './names/species.js';
export { unitName } from './names/units.js';
export type { ComparedLine } from './plan/compare-plans.js';
export { comparePlans } from './plan/compare-plans.js';
export { describePlan } from './plan/describe-plan.js';
export type { AnswerLine, DescribedPlan, Section, SectionId } from './plan/types.js';
export type { ExplainedProblem } from './problems/explain-problem.js';
export { explainError, explainProblem } from './problems/explain-problem.js';
export type { StageOrGapId } from './stages/ids.js';
export { coldWaterDrop, stageName, stageSentence } from './stages/stage-name.js';
export type { DisplayOptions } from './types.js';
export { formatFraction, formatMass, formatMoisture, formatPressure } from './units/amounts.js';
export { formatTemperature } from './units/temperature.js';
export { explain } from './warnings/explain.js';
