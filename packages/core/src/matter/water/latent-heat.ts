import { interpolate } from '../../foundation/numeric/interpolate.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';

/**
 * Latent heat of water, kJ/kg, at temperatures, °C: the Clapeyron equation with the density
 * equations of the same release as the vapour pressure. Where the curve bends more the points lie
 * closer; a ruler between them errs by less than 0.4 kJ/kg.
 */
export const LATENT_HEAT_TABLE = {
  source: 'steam-table-interpolation',
  grade: 'derived',
  points: [
    [0.01, 2500.5],
    [40, 2406.1],
    [70, 2333.1],
    [95, 2269.7],
    [115, 2216.2],
    [130, 2173.9],
    [140, 2144.5],
    [150, 2113.9],
    [160, 2082.1],
    [170, 2048.9],
    [180, 2014.2],
    [190, 1977.9],
    [200, 1939.8],
  ],
} as const;

/** The table's own ends. */
export const LATENT_HEAT_DOMAIN_C: Span = [0.01, 200];

/**
 * Heat it takes to turn water that has reached its boil into steam.
 *
 * For a syrup boiling above the boil of water it errs by under 2 %: the steam leaves hotter, and
 * the sugar holds the water a little.
 *
 * @param temperatureC - Temperature at which the water boils, °C. Domain 0.01 to 200.
 * @returns `latentHeatKJPerKg`, kJ/kg, within 0.5.
 * @throws {@link ModelRangeError} outside the table.
 * @example
 * waterLatentHeat(95).latentHeatKJPerKg // 2 269.7
 * @source steam-table-interpolation
 */
export function waterLatentHeat(temperatureC: number): Checked<{ latentHeatKJPerKg: number }> {
  requireWithin('temperatureC', temperatureC, LATENT_HEAT_DOMAIN_C);
  return { latentHeatKJPerKg: interpolate(LATENT_HEAT_TABLE.points, temperatureC), warnings: [] };
}
