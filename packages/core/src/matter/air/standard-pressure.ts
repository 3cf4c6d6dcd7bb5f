import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';

const source = 'us-standard-atmosphere-1976';
const grade = 'secondary';

/** Pressure of the standard atmosphere at sea level, Pa. */
export const SEA_LEVEL_PRESSURE_PA = 101_325;

/** Defining constants of the lowest layer of the standard atmosphere. */
export const STANDARD_PRESSURE_CONSTANTS = {
  seaLevelPressurePa: { value: 101_325, source, grade },
  seaLevelTemperatureK: { value: 288.15, source, grade },
  lapseRateKPerM: { value: 0.0065, source, grade },
  gravityMPerS2: { value: 9.80665, source, grade },
  airMolarMassKgPerMol: { value: 0.0289644, source, grade },
  gasConstantJPerMolK: { value: 8.31432, source, grade, note: '1976 value, kept on purpose' },
} as const satisfies CitedConstants;

/** The layer ends at 11 km; no shore of the Earth lies 2 km below the sea. */
export const STANDARD_PRESSURE_DOMAIN_M: Span = [-2_000, 11_000];
/** Heights the printed rows and a second implementation were held against. */
export const STANDARD_PRESSURE_TESTED_M: Span = [-500, 10_000];

/**
 * Air pressure at an elevation on a standard day.
 *
 * Weather moves the real barometer by a few per cent either way, so prefer a measured pressure
 * when the cook has one.
 *
 * @equation p = p₀ · (1 − L·h / T₀)^(g·M / (R·L))
 * @param elevationM - Elevation above sea level, m. Domain −2 000 to 11 000.
 * @returns `pressurePa`, Pa, with a warning outside −500 to 10 000 m.
 * @throws {@link ModelRangeError} if the elevation leaves the layer.
 * @example
 * standardPressure(1_609).pressurePa // 83 431, a mile up
 * @source us-standard-atmosphere-1976
 */
export function standardPressure(elevationM: number): Checked<{ pressurePa: number }> {
  requireWithin('elevationM', elevationM, STANDARD_PRESSURE_DOMAIN_M);
  const {
    seaLevelPressurePa: p0,
    seaLevelTemperatureK: T0,
    lapseRateKPerM: L,
    gravityMPerS2: g,
    airMolarMassKgPerMol: M,
    gasConstantJPerMolK: R,
  } = STANDARD_PRESSURE_CONSTANTS;
  const exponent = (g.value * M.value) / (R.value * L.value);
  return {
    pressurePa: p0.value * (1 - (L.value * elevationM) / T0.value) ** exponent,
    warnings: warnOutside('elevationM', elevationM, STANDARD_PRESSURE_TESTED_M),
  };
}
