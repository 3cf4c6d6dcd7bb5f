import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import { THERMOMETER_DOMAIN_C } from './scale-line.js';

const source = 'emergent-column';
const grade = 'memory';

/** How much more a liquid expands than the glass around it, per kelvin. */
export const STEM_CONSTANTS = {
  mercury: { value: 0.00016, source, grade },
  spirit: { value: 0.001, source, grade },
} as const satisfies CitedConstants;

/**
 * What to add to a glass thermometer whose column stands out of the mass.
 *
 * The part of the column in the air is cooler and shorter than it should be, so the reading is too
 * low: by one or two degrees with mercury, by nine with spirit. Hang it to its mark and there is
 * nothing to correct. A glass thermometer that breaks in the pan spoils the batch.
 *
 * @equation correction = K · n · (reading − stem)
 * @param input - `readingC`, °C; `exposedK`: degrees of scale between the mass and the top of the
 *   column, 0 to 400; `stemC`: temperature of that part, °C; `liquid`: mercury or spirit.
 * @returns `correctionK`, K, to add to the reading; below zero where the stem is hotter.
 * @throws {@link ModelRangeError} outside the domains or for another liquid.
 * @example
 * stemCorrection({ readingC: 150, exposedK: 100, stemC: 60, liquid: 'spirit' }).correctionK // 9 K
 * @source emergent-column
 */
export function stemCorrection({
  readingC,
  exposedK,
  stemC,
  liquid,
}: {
  readonly readingC: number;
  readonly exposedK: number;
  readonly stemC: number;
  readonly liquid: 'mercury' | 'spirit';
}): { readonly correctionK: number } {
  requireWithin('readingC', readingC, THERMOMETER_DOMAIN_C);
  requireWithin('exposedK', exposedK, [0, 400]);
  requireWithin('stemC', stemC, THERMOMETER_DOMAIN_C);
  if (!Object.hasOwn(STEM_CONSTANTS, liquid)) {
    throw unknownName('liquid', liquid, 'Liquid must be mercury or spirit');
  }
  return { correctionK: STEM_CONSTANTS[liquid].value * exposedK * (readingC - stemC) };
}
