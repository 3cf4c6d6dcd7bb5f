import type { Figure, PlanDocument } from '../../job/plan/types.js';
import { gradeWord } from '../names/grades.js';

/**
 * How far a figure may be off, with the word for how well it is known: ` (2.1 % to 3.7 %, an estimate)`.
 *
 * Nothing for a figure with no band: it was given, or it is counted. The word is that of the model
 * the figure comes from, or of the one that makes most of the band.
 */
export function trustIn(
  plan: PlanDocument,
  figure: Figure,
  format: (value: number) => string,
  model: Figure['model'] = figure.model,
): string {
  const [low, high] = figure.band;
  const grade = plan.models[model]?.grade;
  const range = format(low) === format(high) ? '' : `${format(low)} to ${format(high)}`;
  if (range === '') return '';
  return ` (${range}${grade === undefined ? '' : `, ${gradeWord(grade)}`})`;
}
