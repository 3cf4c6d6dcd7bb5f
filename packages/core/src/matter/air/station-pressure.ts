import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import { STANDARD_PRESSURE_DOMAIN_M } from './standard-pressure.js';

const source = 'smithsonian-altimeter';
const grade = 'secondary';

/** Constants of the altimeter setting, which is reckoned in hPa and m. */
export const STATION_PRESSURE_CONSTANTS = {
  exponent: { value: 0.190284, source, grade },
  perMetre: {
    value: 8.4228807e-5,
    source,
    grade,
    note: 'hPa to the power of the exponent, a metre',
  },
} as const satisfies CitedConstants;

/** No weather has been seen outside this; 83 000 is a pressure at the pan, not a reduced one. */
export const SEA_LEVEL_PRESSURE_DOMAIN_PA: Span = [85_000, 110_000];
/** Weather and heights over which two printed forms were held against each other. */
export const SEA_LEVEL_PRESSURE_TESTED_PA: Span = [95_000, 105_000];
/** Kitchens of the Earth. */
export const STATION_PRESSURE_TESTED_M: Span = [-500, 5_000];

/**
 * Pressure at the pan from the one a weather report gives, which is reduced to sea level.
 *
 * A report says about 1 013 hPa everywhere; put in as it stands it makes water boil 5 °C too hot a
 * mile up. This undoes the altimeter setting (QNH), as airports report it. A mean-sea-level
 * pressure (QFF) is reduced with the real air temperature and differs by up to 10 hPa at that
 * height, which is 0.3 °C of boiling point. Best of all is to boil water and read the thermometer.
 *
 * @equation p = (QNH^k − c·h)^(1/k), p and QNH in hPa
 * @param report - `seaLevelPressurePa`, Pa, 85 000 to 110 000; `elevationM`, m, −2 000 to 11 000.
 * @returns `pressurePa`, Pa, with a warning outside 95 000 to 105 000 Pa or −500 to 5 000 m.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * stationPressure({ seaLevelPressurePa: 101_325, elevationM: 1_609 }).pressurePa // 83 424
 * @source smithsonian-altimeter
 */
export function stationPressure({
  seaLevelPressurePa,
  elevationM,
}: {
  readonly seaLevelPressurePa: number;
  readonly elevationM: number;
}): Checked<{ pressurePa: number }> {
  requireWithin('seaLevelPressurePa', seaLevelPressurePa, SEA_LEVEL_PRESSURE_DOMAIN_PA);
  requireWithin('elevationM', elevationM, STANDARD_PRESSURE_DOMAIN_M);
  const { exponent: k, perMetre: c } = STATION_PRESSURE_CONSTANTS;
  const qnhHpa = seaLevelPressurePa / 100;
  return {
    pressurePa: 100 * (qnhHpa ** k.value - c.value * elevationM) ** (1 / k.value),
    warnings: [
      ...warnOutside('seaLevelPressurePa', seaLevelPressurePa, SEA_LEVEL_PRESSURE_TESTED_PA),
      ...warnOutside('elevationM', elevationM, STATION_PRESSURE_TESTED_M),
    ],
  };
}
