import { around } from '../../foundation/results/band.js';
import type { Checked, None, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { READING_DOMAIN_BRIX } from './specific-gravity.js';

const source = 'refractometer-temperature-fit';
const grade = 'derived';

/** What to add, by how far the prism is from 20 °C and by what it shows. */
export const REFRACTOMETER_TEMPERATURE_CONSTANTS = {
  perK: { value: 0.0589345, source, grade },
  perKPerBrix: { value: 6.64559e-4, source, grade },
  perKPerBrix2: { value: -5.22495e-6, source, grade },
  perK2: { value: 5.14486e-4, source, grade },
  plusMinusBrix: { value: 0.02, source, grade, note: 'at 20 °C and below' },
  warmPlusMinusBrix: { value: 0.05, source, grade, note: 'from 25 °C: one recalled figure' },
} as const satisfies CitedConstants;

/** Prisms that can be corrected, °C. */
export const REFRACTOMETER_READS_C: Span = [10, 30];
/** Printed corrections lie between these, °C. */
export const REFRACTOMETER_TESTED_C: Span = [10, 20];
/** Printed corrections lie between these, °Bx. */
export const REFRACTOMETER_TESTED_BRIX: Span = [10, 75];
/** From freezing to the hottest syrup, °C. */
export const REFRACTOMETER_DOMAIN_C: Span = [-20, 200];

/** What to add to a reading, °Bx. */
export type TemperatureCorrection = Checked<{ correctionBrix: number; band: Span }>;

/** Why a reading cannot be corrected: the sample has to come to the warmth of the room first. */
export type NoReading = None<'too-hot-to-read' | 'too-cold-to-read'> & {
  /** Between these it can, °C. */
  readonly temperaturesC: Span;
};

/**
 * What to add to a sugar refractometer's reading when its prism is not at 20 °C.
 *
 * Not for an instrument that corrects by itself. Do not read hot syrup: it steams, it is stronger a
 * moment later, and no correction is known; let a drop cool on a cold plate, under cover.
 *
 * @equation c = (T − 20)·(0.0589345 + 6.64559e-4·B − 5.22495e-6·B²) + 5.14486e-4·(T − 20)²
 * @param reading - `brix` as shown, 0 to 95; `temperatureC` of prism and sample, °C.
 * @returns `correctionBrix` to add and its `band`, °Bx, with a warning over 20 °C and outside 10 to
 *   75 °Bx; or `none` below 10 and above 30 °C.
 * @throws {@link ModelRangeError} outside 0 to 95 °Bx, or where nobody cooks, under −20 or over 200 °C.
 * @example
 * brixTemperatureCorrection({ brix: 60, temperatureC: 15 }).correctionBrix // -0.39 °Bx
 * @source refractometer-temperature-fit, oiv-2009
 */
export function brixTemperatureCorrection({
  brix,
  temperatureC,
}: {
  readonly brix: number;
  readonly temperatureC: number;
}): TemperatureCorrection | NoReading {
  requireWithin('brix', brix, READING_DOMAIN_BRIX);
  requireWithin('temperatureC', temperatureC, REFRACTOMETER_DOMAIN_C);
  const [coldest, hottest] = REFRACTOMETER_READS_C;
  if (temperatureC > hottest) return none('too-hot-to-read');
  if (temperatureC < coldest) return none('too-cold-to-read');
  const { perK, perKPerBrix, perKPerBrix2, perK2 } = REFRACTOMETER_TEMPERATURE_CONSTANTS;
  const { plusMinusBrix, warmPlusMinusBrix } = REFRACTOMETER_TEMPERATURE_CONSTANTS;
  const dT = temperatureC - 20;
  const correctionBrix =
    dT * (perK.value + brix * (perKPerBrix.value + brix * perKPerBrix2.value)) +
    perK2.value * dT ** 2;
  const warm = Math.min(1, Math.max(0, dT / 5));
  return {
    correctionBrix,
    band: around(
      correctionBrix,
      plusMinusBrix.value + warm * (warmPlusMinusBrix.value - plusMinusBrix.value),
    ),
    warnings: [
      ...warnOutside('brix', brix, REFRACTOMETER_TESTED_BRIX),
      ...warnOutside('temperatureC', temperatureC, REFRACTOMETER_TESTED_C),
    ],
  };
}

function none(reason: NoReading['reason']): NoReading {
  return { kind: 'none', reason, temperaturesC: REFRACTOMETER_READS_C };
}
