import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { DRY_MELT_CONSTANTS, PAN_CONSTANTS } from './constants.js';
import { coolingMinutes, type NoCooling } from './cooling-time.js';
import { PAN_MASS_DOMAIN_G } from './hob-power.js';
import { wettedAreaM2 } from './pan-loss.js';

/** How long a mass cools in its pan. */
export type PanCoolingTime = Checked<{
  minutes: number;
  /** Of `minutes`. */
  band: Span;
  /** The distance to the air shrinks to 37 % in this time, s. */
  timeConstantS: number;
}>;

/**
 * How long a mass cools in its pan, off the hob: until an acid may go in, or no more can be poured.
 * An estimate.
 *
 * Good to a factor of one and a half. The pan stands on something that takes no heat, and the mass
 * is stirred; unstirred it skins over while its middle stays hotter than said. It burns to the bone
 * for as long as it flows.
 *
 * @equation T = Ta + (T₀ − Ta)·e^(−t/τ), τ = (m·c + m_pan·c_steel)/(h·A)
 * @param options - `massG` of the mass, g, 1 to 1 000 000; `panDiameterMm`, mm, 20 to 2 000;
 *   `panMassG`, steel, g, nothing if left out; `fromC` and `toC`, °C, 0 to 250; `airC`, °C, −40 to
 *   100, 22 if left out.
 * @returns `minutes` with their `band` and `timeConstantS`; or none: `never-cools` to the air or
 *   below, `already-cooler`.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * panCoolingTime({ massG: 1_300, panDiameterMm: 200, fromC: 150, toC: 120 }).minutes // 15.2
 * @source common-practice, dry-melt-heat
 */
export function panCoolingTime(options: {
  readonly massG: number;
  readonly panDiameterMm: number;
  readonly panMassG?: number | undefined;
  readonly fromC: number;
  readonly toC: number;
  readonly airC?: number | undefined;
}): PanCoolingTime | NoCooling {
  const { massG, panDiameterMm, panMassG = 0 } = options;
  requireWithin('massG', massG, [1, 1e6]);
  requireWithin('panMassG', panMassG, PAN_MASS_DOMAIN_G);
  const { steelKJPerKgK, surfaceWPerM2K } = PAN_CONSTANTS;
  const joulesPerK = massG * DRY_MELT_CONSTANTS.meltKJPerKgK + panMassG * steelKJPerKgK;
  const wattsPerK = surfaceWPerM2K * wettedAreaM2(panDiameterMm, massG);
  const timeConstantS = joulesPerK / wattsPerK;
  const cooled = coolingMinutes(timeConstantS, options);
  return 'kind' in cooled ? cooled : { ...cooled, timeConstantS, warnings: [] };
}
