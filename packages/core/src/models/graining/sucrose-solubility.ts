import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';

const source = 'vavrinecz-1962',
  grade = 'secondary';

/** Per cent of the saturated solution against °C, power by power. */
export const SUCROSE_SOLUBILITY_CONSTANTS = {
  constantPercent: { value: 64.447, source, grade },
  linearPercentPerC: { value: 0.08222, source, grade },
  squarePercentPerC2: { value: 1.6169e-3, source, grade },
  cubePercentPerC3: { value: -1.558e-6, source, grade },
  fourthPercentPerC4: { value: -4.63e-8, source, grade },
} as const satisfies CitedConstants;

/** The polynomial was fitted between these, °C. */
export const SUCROSE_SOLUBILITY_DOMAIN_C: Span = [-13, 100];

/**
 * How much sucrose water holds: the saturated solution at a temperature.
 *
 * Sucrose alone; syrup and invert beside it leave less room for it. Above 100 °C the boiling curve
 * sets the strength, not solubility. Good to 0.3 points to 80 °C and 0.5 above.
 *
 * @equation 100·w = 64.447 + 0.08222·t + 1.6169e-3·t² − 1.558e-6·t³ − 4.63e-8·t⁴
 * @param temperatureC - °C, −13 to 100.
 * @returns `sucroseMassFraction`, 0–1 of the solution.
 * @throws {@link ModelRangeError} outside the range of the polynomial.
 * @example
 * sucroseSolubility(20).sucroseMassFraction // 0.6672
 * @source vavrinecz-1962
 */
export function sucroseSolubility(temperatureC: number): Checked<{ sucroseMassFraction: number }> {
  requireWithin('temperatureC', temperatureC, SUCROSE_SOLUBILITY_DOMAIN_C);
  const {
    constantPercent: a,
    linearPercentPerC: b,
    squarePercentPerC2: c,
    cubePercentPerC3: d,
    fourthPercentPerC4: e,
  } = SUCROSE_SOLUBILITY_CONSTANTS;
  const t = temperatureC;
  const percent = a.value + t * (b.value + t * (c.value + t * (d.value + t * e.value)));
  return { sucroseMassFraction: percent / 100, warnings: [] };
}
