import { DRY_END_CONSTANTS } from './constants.js';

/** Which of the three: the law as printed, slowed where it is dry, or a third of that. */
export type Law = 'upper' | 'middle' | 'low';

/**
 * What the printed rate is multiplied by in a dry mass. An estimate: nobody measured there. Poor in
 * water, acids come apart less, and they dissolve slowly.
 */
export function dryEnd(law: Law, dissolvedMassFraction: number): number {
  const { fromMassFraction, tenfoldPerMassFraction, middleOverLow } = DRY_END_CONSTANTS;
  const beyond = dissolvedMassFraction - fromMassFraction.value;
  if (law === 'upper' || beyond <= 0) return 1;
  const middle = 10 ** (-beyond / tenfoldPerMassFraction.value);
  return law === 'middle' ? middle : middle / middleOverLow.value;
}
