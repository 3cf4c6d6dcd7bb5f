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
export type Line = { readonly atZeroC: number; readonly perK: number };

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
/** Ice to boil on the scale; outside this the thermometer is broken or two readings are swapped. */
export const THERMOMETER_SCALE_DOMAIN_K: Span = [50, 150];

/** @throws ModelRangeError if the checks cannot be meant, or cannot be used. */
export function scaleOf(checks: ThermometerChecks): Scale {
  const { boilingWaterReadingC: boil, waterBoilsAtC: trueBoil, iceWaterReadingC: ice } = checks;
  if (boil !== undefined) requireWithin('boilingWaterReadingC', boil, THERMOMETER_DOMAIN_C);
  if (ice !== undefined) requireWithin('iceWaterReadingC', ice, THERMOMETER_DOMAIN_C);
  if (trueBoil !== undefined) requireWithin('waterBoilsAtC', trueBoil, [50, 150]);
  if (boil !== undefined && trueBoil === undefined) {
    throw new ModelRangeError('A reading in boiling water needs what that water boils at.', {
      code: 'not-allowed-together',
      parameter: 'waterBoilsAtC',
      received: undefined,
    });
  }
  if (boil !== undefined && trueBoil !== undefined) {
    return ice === undefined ? checkedInSteam(boil, trueBoil) : checkedTwice(ice, boil, trueBoil);
  }
  if (ice === undefined) return { correction: 'none', line: { atZeroC: 0, perK: 1 } };
  return {
    correction: 'shift',
    line: { atZeroC: ice, perK: 1 },
    // It may be right in boiling water and wrong in ice.
    open: { checkedAtC: 0, otherwise: { atZeroC: ice, perK: (100 - ice) / 100 } },
  };
}

function checkedInSteam(boil: number, trueBoil: number): Scale {
  requireWithin('boilingWaterReadingC', boil, THERMOMETER_SCALE_DOMAIN_K);
  return {
    correction: 'shift',
    line: { atZeroC: boil - trueBoil, perK: 1 },
    // It may be right in ice and stretched.
    open: { checkedAtC: trueBoil, otherwise: { atZeroC: 0, perK: boil / trueBoil } },
  };
}

function checkedTwice(ice: number, boil: number, trueBoil: number): Scale {
  requireWithin('boilingLessIceReadingK', boil - ice, THERMOMETER_SCALE_DOMAIN_K);
  return { correction: 'scale', line: { atZeroC: ice, perK: (boil - ice) / trueBoil } };
}
