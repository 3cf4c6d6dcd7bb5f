import { around, exactly, joinBands } from '../../foundation/results/band.js';
import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import {
  type Correction,
  scaleOf,
  THERMOMETER_CONSTANTS,
  THERMOMETER_DOMAIN_C,
  type ThermometerChecks,
} from './scale-line.js';

/** What a thermometer shows, and how that was found. */
export type ThermometerReading = {
  readonly readingC: number;
  readonly correction: Correction;
  readonly band: Span;
};

/** What is behind a reading, and how that was found. */
export type TrueTemperature = {
  readonly trueC: number;
  readonly correction: Correction;
  readonly band: Span;
};

/**
 * What this thermometer shows in a mass of known temperature.
 *
 * One check shifts the whole scale, two stretch it as well. After one check only, the reading far
 * from it is uncertain: at 150 °C by about a degree after a check in boiling water. What the
 * thermometer does between two checks and beyond is taken as straight. Whoever takes the air
 * pressure from this same reading in boiling water has its error in it already.
 *
 * @equation shift: reading = true + (check − true check);
 *   scale: reading = ice + true · (boil − ice) / water boils at
 * @param input - `trueC`, °C, −50 to 400; the checks `boilingWaterReadingC`, 50 to 150 °C, with
 *   `waterBoilsAtC`, and `iceWaterReadingC`, °C.
 * @returns `readingC` and `band`, °C, and which `correction` was made.
 * @throws {@link ModelRangeError} if a reading in boiling water comes without what the water boils
 *   at, or the two checks lie less than 50 or more than 150 degrees apart.
 * @example
 * thermometerReading({ trueC: 142, boilingWaterReadingC: 95.8, waterBoilsAtC: 95 }).readingC // 142.8 °C
 * @source common-practice
 */
export function thermometerReading(
  input: { readonly trueC: number } & ThermometerChecks,
): ThermometerReading {
  const { trueC } = input;
  requireWithin('trueC', trueC, THERMOMETER_DOMAIN_C);
  const { line, correction, open } = scaleOf(input);
  const readingC = line[0] + line[1] * trueC;
  if (open === undefined) return { readingC, correction, band: exactly(readingC) };
  const { checkedAtC, otherwise } = open;
  const otherC = otherwise[0] + otherwise[1] * trueC;
  return {
    readingC,
    correction,
    band: joinBands(readingC, exactly(otherC), openBand(readingC, trueC - checkedAtC)),
  };
}

/**
 * The true temperature behind a reading of this thermometer.
 *
 * The other way round from `thermometerReading`, with the same checks and the same limits.
 *
 * @equation shift: true = reading − (check − true check);
 *   scale: true = (reading − ice) · water boils at / (boil − ice)
 * @param input - `readingC`, °C, −50 to 400; the checks as for `thermometerReading`.
 * @returns `trueC` and `band`, °C, and which `correction` was made.
 * @throws {@link ModelRangeError} as `thermometerReading` does.
 * @example
 * trueFromReading({
 *   readingC: 147,
 *   boilingWaterReadingC: 98,
 *   waterBoilsAtC: 100,
 *   iceWaterReadingC: 0,
 * }).trueC // 150 °C
 * @source common-practice
 */
export function trueFromReading(
  input: { readonly readingC: number } & ThermometerChecks,
): TrueTemperature {
  const { readingC } = input;
  requireWithin('readingC', readingC, THERMOMETER_DOMAIN_C);
  const { line, correction, open } = scaleOf(input);
  const trueC = (readingC - line[0]) / line[1];
  if (open === undefined) return { trueC, correction, band: exactly(trueC) };
  const { checkedAtC, otherwise } = open;
  const otherC = (readingC - otherwise[0]) / otherwise[1];
  return {
    trueC,
    correction,
    band: joinBands(trueC, exactly(otherC), openBand(trueC, trueC - checkedAtC)),
  };
}

/** A degree either way for every fifty degrees from the only check. */
function openBand(value: number, awayK: number): Span {
  return around(value, THERMOMETER_CONSTANTS.openKPerK.value * Math.abs(awayK));
}
