import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import { CONVERSION_DEXTROSE_EQUIVALENTS } from './profile-rows.js';
import type { Conversion, Profile } from './types.js';

/** Printed shares are rounded to a tenth of a per cent or to a whole one: their sum is not exact. */
export const PROFILE_SUM_LIMITS: Span = [0.98, 1.02];

/** @throws ModelRangeError if a share is no share, or the shares are not those of one whole. */
export function requireProfile({ dp1, dp2, dp3, dp4plus }: Profile): void {
  for (const share of [dp1, dp2, dp3, dp4plus]) requireWithin('shareOfProfile', share, [0, 1]);
  requireWithin('sumOfProfile', dp1 + dp2 + dp3 + dp4plus, PROFILE_SUM_LIMITS);
}

/** @throws ModelRangeError if there is no such way of cutting starch. */
export function requireConversion(conversion: Conversion): void {
  if (!Object.hasOwn(CONVERSION_DEXTROSE_EQUIVALENTS, conversion)) {
    throw unknownName('conversion', conversion, 'No starch syrup is cut this way');
  }
}

/** @throws ModelRangeError if starch cut this way does not reach this dextrose equivalent. */
export function requireReachable(dextroseEquivalent: number, conversion: Conversion): void {
  requireConversion(conversion);
  requireWithin(
    'dextroseEquivalent',
    dextroseEquivalent,
    CONVERSION_DEXTROSE_EQUIVALENTS[conversion],
  );
}
