import type { Figure, PlanDocument } from '../../job/plan/types.js';
import { gradeWord } from '../names/grades.js';

/**
 * How far a figure may be off, with the word for how well it is known: ` (2.1 % to 3.7 %, an estimate)`.
 *
 * Nothing for a figure with no band: it was given, or it is counted.
 */
export function trustIn(
  plan: PlanDocument,
  figure: Figure,
  format: (value: number) => string,
): string {
  const [low, high] = figure.band;
  const grade = plan.models[figure.model]?.grade;
  const range = format(low) === format(high) ? '' : `${format(low)} to ${format(high)}`;
  if (range === '') return '';
  return ` (${range}${grade === undefined ? '' : `, ${gradeWord(grade)}`})`;
}
