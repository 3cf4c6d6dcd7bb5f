import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';

/** What the thermometer shows where the true temperature is known. */
export type ThermometerChecks = {
  /** In water at a rolling boil, °C. */
  readonly boilingWaterReadingC?: number | undefined;
  /** What that water truly boils at, °C; needed with the reading. */
  readonly waterBoilsAtC?: number | undefined;
  /** In half crushed ice, half water, °C. */
  readonly iceWaterReadingC?: number | undefined;
};

/** How a reading was made from a temperature, or the other way. */
export type Correction = 'none' | 'shift' | 'scale';

/** A thermometer: what it shows at 0 °C, and for each true degree more. */
export type Line = readonly [atZeroC: number, perK: number];

/** The thermometer as one or two checks show it. */
export type Scale = {
  readonly correction: Correction;
  readonly line: Line;
  /** After one check: where it was made, and the other thing the thermometer may be doing. */
  readonly open?: { readonly checkedAtC: number; readonly otherwise: Line };
};

/** What one check leaves open: a degree at 150 °C, fifty degrees above the boil. */
export const THERMOMETER_CONSTANTS = {
  openKPerK: { value: 0.02, source: 'common-practice', grade: 'practice' },
} as const satisfies CitedConstants;

/** Of anything a kitchen thermometer is put into. */
export const THERMOMETER_DOMAIN_C: Span = [-50, 400];
/** From ice to boil; outside this a thermometer is broken or two readings are swapped. */
export const THERMOMETER_SCALE_DOMAIN_K: Span = [50, 150];

/** @throws ModelRangeError if the checks cannot be meant, or cannot be used. */
export function scaleOf({
  boilingWaterReadingC: boil,
  waterBoilsAtC: trueBoil,
  iceWaterReadingC: ice,
}: ThermometerChecks): Scale {
  requireWithin('iceWaterReadingC', ice ?? 0, THERMOMETER_DOMAIN_C);
  requireWithin('waterBoilsAtC', trueBoil ?? 100, THERMOMETER_SCALE_DOMAIN_K);
  if (boil === undefined) {
    return ice === undefined
      ? { correction: 'none', line: [0, 1] }
      : // It may be wrong in ice and right in boiling water.
        shifted(0, ice, [ice, (100 - ice) / 100]);
  }
  if (trueBoil === undefined) {
    throw new ModelRangeError('Say also what the water boils at.', {
      code: 'not-allowed-together',
      parameter: 'waterBoilsAtC',
      received: trueBoil,
    });
  }
  requireWithin('boilingLessIceReadingK', boil - (ice ?? 0), THERMOMETER_SCALE_DOMAIN_K);
  return ice === undefined
    ? // It may be right in ice and stretched.
      shifted(trueBoil, boil - trueBoil, [0, boil / trueBoil])
    : { correction: 'scale', line: [ice, (boil - ice) / trueBoil] };
}

function shifted(checkedAtC: number, offsetK: number, otherwise: Line): Scale {
  return {
    correction: 'shift',
    line: [offsetK, 1],
    open: { checkedAtC, otherwise },
  };
}
