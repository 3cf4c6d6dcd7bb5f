import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { SYRUP_MIX_DOMAIN_G } from './mix-syrups.js';

/** What one gram of sucrose takes up when it splits: 18.015 of 342.30 g/mol. */
export const INVERT_CONSTANTS = {
  waterPerSucrose: { value: 0.05263, source: 'definition', grade: 'derived' },
} as const satisfies CitedConstants;

/** No sucrose split, to all of it. */
export const INVERTED_DOMAIN_FRACTION: Span = [0, 1];

/** What is in an invert syrup beside its water. */
export type InvertSyrup = {
  readonly sucroseG: number;
  readonly glucoseG: number;
  readonly fructoseG: number;
  /** Water that became sugar, g. */
  readonly waterConsumedG: number;
  readonly drySolidsG: number;
  /** Glucose and fructose in the dry solids, 0 to 1; 100 times that is its dextrose equivalent. */
  readonly reducingSugarsMassFractionOfDrySolids: number;
};

/**
 * What sucrose becomes when part of it, or all, is split into invert sugar.
 *
 * Each split takes up water, so the dry solids gain a twentieth. How long acid and heat take for it
 * is another question.
 *
 * @equation r = 1.0526·f / (1 + 0.0526·f)
 * @param input - `sucroseG` before, g; `invertedFraction` of it, 0 to 1.
 * @returns `sucroseG` left, `glucoseG`, `fructoseG`, `waterConsumedG`, `drySolidsG`, g, and
 *   `reducingSugarsMassFractionOfDrySolids`, 0 to 1.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * invertSyrup({ sucroseG: 1_000, invertedFraction: 1 }).drySolidsG // 1052.63 g
 * @source definition
 */
export function invertSyrup({
  sucroseG,
  invertedFraction,
}: {
  readonly sucroseG: number;
  readonly invertedFraction: number;
}): InvertSyrup {
  requireWithin('sucroseG', sucroseG, SYRUP_MIX_DOMAIN_G);
  requireWithin('invertedFraction', invertedFraction, INVERTED_DOMAIN_FRACTION);
  const splitG = sucroseG * invertedFraction;
  const waterConsumedG = splitG * INVERT_CONSTANTS.waterPerSucrose.value;
  const invertG = splitG + waterConsumedG;
  const drySolidsG = sucroseG + waterConsumedG;
  return {
    sucroseG: sucroseG - splitG,
    glucoseG: invertG / 2,
    fructoseG: invertG / 2,
    waterConsumedG,
    drySolidsG,
    reducingSugarsMassFractionOfDrySolids: invertG / drySolidsG,
  };
}
