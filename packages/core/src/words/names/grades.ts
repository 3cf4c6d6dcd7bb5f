import type { Grade } from '../../foundation/validity/constants.js';
import type { Catalogue } from '../types.js';

/** How well something is known, in a word or two. */
export const GRADE_WORDS = {
  primary: 'read in print',
  secondary: 'quoted in print',
  practice: 'common practice',
  memory: 'from memory',
  derived: 'worked out here',
  assumed: 'an assumption',
} as const satisfies Catalogue['grades'];

/**
 * The word for a grade.
 *
 * @example
 * gradeWord('derived') // 'worked out here'
 */
export function gradeWord(grade: Grade): string {
  return GRADE_WORDS[grade];
}
