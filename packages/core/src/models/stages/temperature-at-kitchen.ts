import { exactly } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { joinWarnings } from '../../foundation/results/warnings.js';
import { fahrenheitFromCelsius } from '../../foundation/units/temperature.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { SEA_LEVEL_PRESSURE_PA } from '../../matter/air/standard-pressure.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { cookTarget } from '../boiling/cook-target.js';
import type { NoBoil } from '../boiling/dry-solids-at-boil.js';
import { type KitchenAir, kitchenPressure } from './kitchen-pressure.js';
import { DRY_SUGAR_FROM_F } from './rungs.js';
import { stagesApply } from './stages-apply.js';
import { SUCROSE_SYRUP } from './sucrose-curve.js';
import { SUGAR_STAGE_DOMAIN_C } from './sugar-stage.js';

/** A recipe's temperature in another kitchen. */
export type KitchenTemperature = {
  readonly temperatureC: number;
  /** From sea level to here, K; below zero uphill. */
  readonly shiftK: number;
  readonly band: Span;
};

/**
 * A recipe's sea-level temperature, for the kitchen it is cooked in.
 *
 * The mass is cooked to the same solids under the air there is. Molten and browning sugar, from
 * 160 °C, holds hardly any water and does not move; sugar alcohols cooked that hot do. The
 * thermometer's own error comes on top. Weather moves the pressure too: prefer a barometer at the
 * pan to the height.
 *
 * @param input - `temperatureC`: for sea level, °C, 5 to 370; `elevationM`, m, −2 000 to 11 000, or
 *   `pressurePa` at the pan, Pa, 1 000 to 115 000; `mixture`: what is cooked, sucrose and water if
 *   left out.
 * @returns `temperatureC`, `shiftK` and `band`, a tenth of the shift either way; or none where the
 *   temperature is `below-the-boil`, `off-scale-dry`, or there is `nothing-dissolved`.
 * @throws {@link ModelRangeError} if height and pressure are both given, or outside the domains.
 * @example
 * temperatureAtKitchen({ temperatureC: 148, elevationM: 1_500 }) // { temperatureC: 142.03…, shiftK: -5.96… }
 * @source stage-chart-medians
 */
export function temperatureAtKitchen({
  temperatureC,
  mixture = SUCROSE_SYRUP,
  ...air
}: {
  readonly temperatureC: number;
  readonly mixture?: Mixture | undefined;
} & KitchenAir): Checked<KitchenTemperature> | NoBoil {
  requireWithin('temperatureC', temperatureC, SUGAR_STAGE_DOMAIN_C);
  const { pressurePa, warnings } = kitchenPressure(air);
  const isDry = fahrenheitFromCelsius(temperatureC) >= DRY_SUGAR_FROM_F;
  if (isDry && stagesApply(mixture).apply) {
    return { temperatureC, shiftK: 0, band: exactly(temperatureC), warnings };
  }
  const target = cookTarget(mixture, {
    temperatureC,
    fromPressurePa: SEA_LEVEL_PRESSURE_PA,
    toPressurePa: pressurePa,
  });
  if ('kind' in target) return target;
  return { ...target, warnings: joinWarnings(warnings, target.warnings) };
}
