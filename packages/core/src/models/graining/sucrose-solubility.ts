import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';

const source = 'vavrinecz-1962',
  grade = 'secondary',
  charles = 'charles-1960',
  recalled = 'memory';

/** Per cent of the saturated solution against °C, power by power. */
export const SUCROSE_SOLUBILITY_CONSTANTS = {
  constantPercent: { value: 64.447, source, grade },
  linearPercentPerC: { value: 0.08222, source, grade },
  squarePercentPerC2: { value: 1.6169e-3, source, grade },
  cubePercentPerC3: { value: -1.558e-6, source, grade },
  fourthPercentPerC4: { value: -4.63e-8, source, grade },
} as const satisfies CitedConstants;

/** The other polynomial in use, a power shorter. */
export const CHARLES_SOLUBILITY_CONSTANTS = {
  constantPercent: { value: 64.397, source: charles, grade: recalled },
  linearPercentPerC: { value: 0.07251, source: charles, grade: recalled },
  squarePercentPerC2: { value: 2.0569e-3, source: charles, grade: recalled },
  cubePercentPerC3: { value: -9.035e-6, source: charles, grade: recalled },
} as const satisfies CitedConstants;

/** The polynomial was fitted between these, °C. */
export const SUCROSE_SOLUBILITY_DOMAIN_C: Span = [-13, 100];

/** The other one from the freezing point only. */
export const CHARLES_SOLUBILITY_DOMAIN_C: Span = [0, 100];

/** Which polynomial of the solubility of sucrose. */
export type SolubilityEquation = 'vavrinecz' | 'charles';

/**
 * How much sucrose water holds: the saturated solution at a temperature.
 *
 * Sucrose alone; syrup and invert beside it leave less room for it. Above 100 °C the boiling curve
 * sets the strength, not solubility. Good to 0.3 points to 80 °C and 0.5 above. The second
 * polynomial lies 0.12 points lower at room temperature and 0.53 higher at 100 °C; it is recalled,
 * and says so in a warning.
 *
 * @equation 100·w = 64.447 + 0.08222·t + 1.6169e-3·t² − 1.558e-6·t³ − 4.63e-8·t⁴; `charles`:
 *   100·w = 64.397 + 0.07251·t + 2.0569e-3·t² − 9.035e-6·t³
 * @param temperatureC - °C, −13 to 100; `charles` from 0.
 * @param options - `equation`: `vavrinecz` where left out.
 * @returns `sucroseMassFraction`, 0–1 of the solution.
 * @throws {@link ModelRangeError} outside the range of the polynomial, or for another name.
 * @example
 * sucroseSolubility(20).sucroseMassFraction // 0.6672
 * @source vavrinecz-1962, charles-1960
 */
export function sucroseSolubility(
  temperatureC: number,
  { equation = 'vavrinecz' }: { readonly equation?: SolubilityEquation | undefined } = {},
): Checked<{ sucroseMassFraction: number }> {
  const t = temperatureC;
  if (equation === 'vavrinecz') {
    requireWithin('temperatureC', t, SUCROSE_SOLUBILITY_DOMAIN_C);
    const {
      constantPercent: a,
      linearPercentPerC: b,
      squarePercentPerC2: c,
      cubePercentPerC3: d,
      fourthPercentPerC4: e,
    } = SUCROSE_SOLUBILITY_CONSTANTS;
    const percent = a.value + t * (b.value + t * (c.value + t * (d.value + t * e.value)));
    return { sucroseMassFraction: percent / 100, warnings: [] };
  }
  if (equation !== 'charles') {
    throw unknownName('equation', equation, 'Solubility of sucrose is by `vavrinecz` or `charles`');
  }
  requireWithin('temperatureC', t, CHARLES_SOLUBILITY_DOMAIN_C);
  const {
    constantPercent: a,
    linearPercentPerC: b,
    squarePercentPerC2: c,
    cubePercentPerC3: d,
  } = CHARLES_SOLUBILITY_CONSTANTS;
  const value = (a.value + t * (b.value + t * (c.value + t * d.value))) / 100;
  return {
    sucroseMassFraction: value,
    warnings: [
      {
        code: 'shown-from-memory',
        parameter: 'solubleMassFraction',
        value,
        limits: [value, value],
        subject: 'sucrose',
      },
    ],
  };
}
