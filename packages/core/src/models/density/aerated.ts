import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { WEIGHED_DOMAIN_G_PER_ML } from './candy-mass.js';

/** No air, to foam that is hardly a mass any more. */
export const AIR_DOMAIN_VOLUME_FRACTION: Span = [0, 0.9];

/**
 * Density of a pulled, beaten or foamed mass from the air in it.
 *
 * Air weighs nothing beside sugar. Pulled satin holds about a sixth of its volume.
 *
 * @equation ρ = ρ₀·(1 − a)
 * @param input - `densityGPerMl` without air, g/mL, 0.1 to 1.6; `airVolumeFraction` of the whole, 0 to
 *   0.9.
 * @returns `densityGPerMl` with the air in it, g/mL.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * aeratedDensity({ densityGPerMl: 1.5, airVolumeFraction: 0.2 }).densityGPerMl // 1.2 g/mL
 * @source definition
 */
export function aeratedDensity({
  densityGPerMl,
  airVolumeFraction,
}: {
  readonly densityGPerMl: number;
  readonly airVolumeFraction: number;
}): { readonly densityGPerMl: number } {
  requireWithin('densityGPerMl', densityGPerMl, WEIGHED_DOMAIN_G_PER_ML);
  requireWithin('airVolumeFraction', airVolumeFraction, AIR_DOMAIN_VOLUME_FRACTION);
  return { densityGPerMl: densityGPerMl * (1 - airVolumeFraction) };
}

/**
 * How much of a pulled, beaten or foamed mass is air, from its density.
 *
 * @equation a = 1 − ρ/ρ₀
 * @param input - `densityGPerMl` as it is, g/mL; `airFreeGPerMl` of the clear mass, g/mL, to 1.6.
 * @returns `airVolumeFraction` of the whole, 0 to 0.9.
 * @throws {@link ModelRangeError} if it is denser than without air, or more than nine tenths air.
 * @example
 * airFromDensity({ densityGPerMl: 1.2, airFreeGPerMl: 1.5 }).airVolumeFraction // 0.2
 * @source definition
 */
export function airFromDensity({
  densityGPerMl,
  airFreeGPerMl,
}: {
  readonly densityGPerMl: number;
  readonly airFreeGPerMl: number;
}): { readonly airVolumeFraction: number } {
  requireWithin('airFreeGPerMl', airFreeGPerMl, WEIGHED_DOMAIN_G_PER_ML);
  const [, most] = AIR_DOMAIN_VOLUME_FRACTION;
  requireWithin('densityGPerMl', densityGPerMl, [airFreeGPerMl * (1 - most), airFreeGPerMl]);
  return { airVolumeFraction: 1 - densityGPerMl / airFreeGPerMl };
}
