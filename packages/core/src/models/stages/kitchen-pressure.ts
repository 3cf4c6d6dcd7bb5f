import type { ModelWarning, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { SEA_LEVEL_PRESSURE_PA, standardPressure } from '../../matter/air/standard-pressure.js';

/** Where the pan stands: by height on a standard day, or by its barometer. */
export type KitchenAir = {
  readonly elevationM?: number | undefined;
  readonly pressurePa?: number | undefined;
};

/** From a vacuum pan to the lowest shore; under more, hard crack would reach dry sugar. */
export const KITCHEN_PRESSURE_DOMAIN_PA: Span = [1_000, 115_000];

/** @throws ModelRangeError if both are given or the pressure is none of a kitchen. */
export function kitchenPressure({ elevationM, pressurePa }: KitchenAir): {
  readonly pressurePa: number;
  readonly warnings: readonly ModelWarning[];
} {
  if (elevationM !== undefined && pressurePa !== undefined) {
    throw new ModelRangeError('Give the elevation or the pressure at the pan, not both.', {
      code: 'not-allowed-together',
      parameter: 'pressurePa',
      received: pressurePa,
    });
  }
  const air =
    elevationM === undefined
      ? { pressurePa: pressurePa ?? SEA_LEVEL_PRESSURE_PA, warnings: [] }
      : standardPressure(elevationM);
  requireWithin('pressurePa', air.pressurePa, KITCHEN_PRESSURE_DOMAIN_PA);
  return air;
}
