import { around } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import {
  BOILING_SEARCH_C,
  boilingTemperatureC,
  WATER_BOILING_DOMAIN_PA,
  waterBoilingPoint,
} from '../../matter/water/boiling-point.js';
import { boilExcess, boilPlusMinusK, boilWarnings } from './boil.js';
import { DISSOLVED_DOMAIN } from './constants.js';
import { lnWaterActivity } from './ln-water-activity.js';
import { dissolvedOf, type Solute, soluteOf } from './solute.js';

/** What `boilingPoint` answers. */
export type BoilingPoint = Checked<{
  /** °C. */
  boilingPointC: number;
  /** Above plain water under the same pressure, K. */
  boilingPointElevationK: number;
  /** Absolute pressure at the pan, Pa. */
  pressurePa: number;
  /** Within this about nine times in ten, °C, if the inputs are right. */
  band: Span;
}>;

/**
 * Temperature at which a sugar mass boils.
 *
 * Give the pressure at the pan; without one it is the standard day at sea level. Fat, oil, alcohol
 * and pigment are left out: they are weighed but not dissolved. So are the head of a deep pan
 * (0.4 °C for 10 cm), a mass that boils late, and what hot sugar turns into.
 *
 * @equation aw(s, T) · psat(T) = p
 * @param mixture - What is in the pan. Dissolved solids 0 to 0.99999 of solids and water.
 * @param options - `pressurePa`: absolute pressure at the pan, Pa, 873 to 21 000 000.
 * @returns `boilingPointC`, °C, `boilingPointElevationK`, K, `pressurePa`, Pa, and `band`, °C, with
 *   warnings outside 0.995 dissolved, 20 to 200 °C or 2 000 to 120 000 Pa, and for sucrose above
 *   165 °C.
 * @throws {@link ModelRangeError} without water, outside the pressures, and for a mass so dry that
 *   it does not boil below 370 °C.
 * @example
 * boilingPoint(solutionOf('sucrose', { drySolidsMassFraction: 0.85 })).boilingPointC // 114.21
 * @source boiling-fit
 */
export function boilingPoint(
  mixture: Mixture,
  { pressurePa = 101_325 }: { readonly pressurePa?: number | undefined } = {},
): BoilingPoint {
  return boilingPointAt(dissolvedOf(mixture), soluteOf(mixture), pressurePa);
}

/** The same for solids that were averaged already. */
export function boilingPointAt(
  dissolvedMassFraction: number,
  solute: Solute,
  pressurePa: number,
): BoilingPoint {
  requireWithin('dissolvedMassFraction', dissolvedMassFraction, DISSOLVED_DOMAIN);
  const water = waterBoilingPoint(pressurePa);
  const boilingPointC =
    dissolvedMassFraction === 0
      ? water.boilingPointC
      : solveBoil(dissolvedMassFraction, solute, pressurePa, water.boilingPointC);
  const at = [dissolvedMassFraction, boilingPointC, pressurePa, solute] as const;
  const plusMinusK = boilPlusMinusK(...at);
  return {
    boilingPointC,
    boilingPointElevationK: boilingPointC - water.boilingPointC,
    pressurePa,
    band: around(boilingPointC, plusMinusK),
    warnings: boilWarnings(...at),
  };
}

function solveBoil(
  dissolvedMassFraction: number,
  solute: Solute,
  pressurePa: number,
  waterBoilsAtC: number,
): number {
  const [, hottestC] = BOILING_SEARCH_C;
  const driest = Math.exp(lnWaterActivity(dissolvedMassFraction, hottestC, solute));
  requireWithin('waterActivity', driest, [pressurePa / WATER_BOILING_DOMAIN_PA[1], 1]);
  return boilingTemperatureC(
    // A trace of solids moves the boil by less than rounding, so the search starts a little below.
    [waterBoilsAtC - 0.01, hottestC],
    (temperatureC) => boilExcess(dissolvedMassFraction, temperatureC, pressurePa, solute),
  );
}
