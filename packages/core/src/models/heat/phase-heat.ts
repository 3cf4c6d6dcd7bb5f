import type { Checked } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { waterBoilingPoint } from '../../matter/water/boiling-point.js';
import { waterLatentHeat } from '../../matter/water/latent-heat.js';
import { BOIL_DOWN_DOMAIN_PA, DISSOLUTION_CONSTANTS, STEAM_CONSTANTS } from './constants.js';

/**
 * Heat that leaves with each kilogram of water boiled out of a hot syrup.
 *
 * A syrup boils above the boil of water, so its steam leaves hotter than steam of that pressure; as
 * the water had been heated so far already, less is left to pay. What the sugar holds the water
 * with is under two parts in a hundred of it and left out.
 *
 * @equation h = L(Tb) − 2.2·(T − Tb), Tb the boil of water under the pressure
 * @param input - `temperatureC` of the syrup, °C, from the boil of water to 250. `pressurePa` at the
 *   pan, Pa, 1 000 to 1 000 000; sea level if left out.
 * @returns `evaporationHeatKJPerKg`, kJ/kg.
 * @throws {@link ModelRangeError} outside the pressures, or where water would not boil.
 * @example
 * evaporationHeat({ temperatureC: 145 }).evaporationHeatKJPerKg // 2157.3
 * @source steam-table-interpolation, heat-above-the-boil
 */
export function evaporationHeat({
  temperatureC,
  pressurePa = 101_325,
}: {
  readonly temperatureC: number;
  readonly pressurePa?: number | undefined;
}): Checked<{ evaporationHeatKJPerKg: number }> {
  requireWithin('pressurePa', pressurePa, BOIL_DOWN_DOMAIN_PA);
  const { boilingPointC } = waterBoilingPoint(pressurePa);
  requireWithin('temperatureC', temperatureC, [boilingPointC, 250]);
  return {
    evaporationHeatKJPerKg: evaporationHeatFrom(boilingPointC)(temperatureC),
    warnings: [],
  };
}

/** The same at one pressure, for a loop over a whole boil. */
export function evaporationHeatFrom(waterBoilsAtC: number): (temperatureC: number) => number {
  const atBoil = waterLatentHeat(waterBoilsAtC).latentHeatKJPerKg;
  const { lessPerKAboveBoilKJPerKgK: less } = STEAM_CONSTANTS;
  return (temperatureC) => atBoil - less.value * (temperatureC - waterBoilsAtC);
}

/**
 * Heat that crystals take as they dissolve.
 *
 * Sucrose and xylitol are taken to come as crystals, whatever they came in; xylitol takes eight
 * times as much. No other solid is counted: of sugar masses it is one or two parts in a hundred of
 * the whole heat.
 *
 * @param mixture - What goes into the pan.
 * @returns `dissolutionHeatKJ`, kJ for the whole mixture.
 * @example
 * const kilogram = mixture([{ ingredient: 'sucrose', massG: 1_000 }]);
 * dissolutionHeat(kilogram).dissolutionHeatKJ // 18.142
 * @source belitz-2009
 */
export function dissolutionHeat(mixture: Mixture): Checked<{ dissolutionHeatKJ: number }> {
  const { sucroseKJPerMol, sucroseGPerMol, xylitolKJPerMol, xylitolGPerMol } =
    DISSOLUTION_CONSTANTS;
  let dissolutionHeatKJ = 0;
  for (const solid of mixture.solids) {
    if (solid.kind !== 'pure') continue;
    const { species, massG } = solid;
    if (species === 'sucrose') dissolutionHeatKJ += (massG * sucroseKJPerMol) / sucroseGPerMol;
    if (species === 'xylitol') dissolutionHeatKJ += (massG * xylitolKJPerMol) / xylitolGPerMol;
  }
  return { dissolutionHeatKJ, warnings: [] };
}
