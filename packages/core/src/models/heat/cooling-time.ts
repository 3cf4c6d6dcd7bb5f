import type { Checked, None, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import {
  COOLING_AIR_C,
  COOLING_SPREAD_TIMES,
  COOLING_TESTED_BIOT,
  COOLING_W_PER_M2K,
  DRY_MELT_CONSTANTS,
  HEAT_DOMAIN_C,
  PIECE_CONSTANTS,
} from './constants.js';

/** What takes the heat of a piece. */
export type CoolingSurface = keyof typeof COOLING_W_PER_M2K;

/** Why something never gets that cool, or is so already. */
export type NoCooling = None<'never-cools' | 'already-cooler'>;

/** What cools, where, and from what to what. */
export type CoolingOptions = {
  /** One piece, g. */
  readonly massG: number;
  readonly fromC: number;
  readonly toC: number;
  /** Air, or the slab, °C; 22 if left out. */
  readonly airC?: number | undefined;
  /** What of the piece is cooled, cm²; a ball of the mass if left out. */
  readonly areaCm2?: number | undefined;
  /** `still-air` if left out. */
  readonly surface?: CoolingSurface | undefined;
  /** Of the surface, W/(m² K), where it is known better. */
  readonly coefficientWPerM2K?: number | undefined;
  /** kJ/(kg K); 2.0 if left out. */
  readonly specificHeatKJPerKgK?: number | undefined;
};

/** How long a piece cools. */
export type CoolingTime = Checked<{
  minutes: number;
  /** Of `minutes`. */
  band: Span;
  /** The distance to the air shrinks to 37 % in this time, s. */
  timeConstantS: number;
  /** How far the middle lags the surface; over 0.2 the middle is later than said. */
  biotNumber: number;
}>;

/** A crumb to a slab for a shop window, g. */
export const PIECE_MASS_DOMAIN_G: Span = [0.1, 100_000];

/**
 * How long a piece cools: until it can be unmoulded, wrapped or eaten. An estimate.
 *
 * Good to a factor of one and a half. The piece is taken to have one temperature all through, which
 * holds to about 12 mm of thickness in still air, not on stone, where the middle stays soft for
 * longer. One specific heat serves for melt and glass, which makes the end a little too long. A
 * piece that is hard outside can still burn a mouth.
 *
 * @equation T = Ta + (T₀ − Ta)·e^(−t/τ), τ = m·c/(h·A), Biot = h·m/(ρ·A·k)
 * @param options - `massG` of one piece, g, 0.1 to 100 000; `fromC` and `toC`, °C, 0 to 250; `airC`,
 *   °C, −40 to 100, 22 if left out; `areaCm2` that is cooled, cm², a ball if left out; `surface`:
 *   `still-air`, `fan` or `slab`, which is one face on metal or stone; or `coefficientWPerM2K`, 0.1
 *   to 10 000; `specificHeatKJPerKgK`, 0.5 to 5, 2.0 if left out.
 * @returns `minutes` with their `band`, `timeConstantS` and `biotNumber`, with a warning over 0.2. Or
 *   none: `never-cools` to the air or below, `already-cooler`.
 * @throws {@link ModelRangeError} outside the domains, or for another surface.
 * @example
 * coolingTime({ massG: 10, areaCm2: 23, fromC: 130, toC: 40 }).minutes // 26.0
 * @source common-practice, dry-melt-heat
 */
export function coolingTime(options: CoolingOptions): CoolingTime | NoCooling {
  const { massG, surface = 'still-air', areaCm2 = ballAreaCm2(massG) } = options;
  if (!Object.hasOwn(COOLING_W_PER_M2K, surface)) {
    throw unknownName('surface', surface, 'A piece cools in still-air, by a fan or on a slab');
  }
  const { coefficientWPerM2K = COOLING_W_PER_M2K[surface].value } = options;
  const { specificHeatKJPerKgK = DRY_MELT_CONSTANTS.meltKJPerKgK } = options;
  requireWithin('massG', massG, PIECE_MASS_DOMAIN_G);
  requireWithin('areaCm2', areaCm2, [0.01, 1e6]);
  requireWithin('coefficientWPerM2K', coefficientWPerM2K, [0.1, 10_000]);
  requireWithin('specificHeatKJPerKgK', specificHeatKJPerKgK, [0.5, 5]);
  const wattsPerK = (coefficientWPerM2K * areaCm2) / 1e4;
  const timeConstantS = (massG * specificHeatKJPerKgK) / wattsPerK;
  const cooled = coolingMinutes(timeConstantS, options);
  if ('kind' in cooled) return cooled;
  const { glassGPerMl, conductivityWPerMK } = PIECE_CONSTANTS;
  const thicknessM = massG / glassGPerMl / areaCm2 / 100;
  const biotNumber = (coefficientWPerM2K * thicknessM) / conductivityWPerMK;
  return {
    ...cooled,
    timeConstantS,
    biotNumber,
    warnings: warnOutside('biotNumber', biotNumber, COOLING_TESTED_BIOT),
  };
}

/** Minutes of an exponential fall towards the air, a factor of one and a half either way. */
export function coolingMinutes(
  timeConstantS: number,
  { fromC, toC, airC = COOLING_AIR_C.value }: Pick<CoolingOptions, 'fromC' | 'toC' | 'airC'>,
): { readonly minutes: number; readonly band: Span } | NoCooling {
  requireWithin('fromC', fromC, HEAT_DOMAIN_C);
  requireWithin('toC', toC, HEAT_DOMAIN_C);
  requireWithin('airC', airC, [-40, 100]);
  if (fromC <= toC) return { kind: 'none', reason: 'already-cooler' };
  if (toC <= airC) return { kind: 'none', reason: 'never-cools' };
  const minutes = (timeConstantS / 60) * Math.log((fromC - airC) / (toC - airC));
  const factor = COOLING_SPREAD_TIMES.value;
  return { minutes, band: [minutes / factor, minutes * factor] };
}

/** Surface of a ball of candy, cm². */
function ballAreaCm2(massG: number): number {
  const volumeMl = massG / PIECE_CONSTANTS.glassGPerMl;
  return Math.cbrt(36 * Math.PI * volumeMl ** 2);
}
