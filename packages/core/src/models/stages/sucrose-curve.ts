import { SEA_LEVEL_PRESSURE_PA } from '../../matter/air/standard-pressure.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilingPointAt } from '../boiling/boiling-point.js';
import { dissolvedAtBoil } from '../boiling/dry-solids-at-boil.js';
import { soluteOf } from '../boiling/solute.js';

/** Sucrose and water, the syrup the charts speak of; how much water does not matter. */
export const SUCROSE_SYRUP: Mixture = {
  waterG: 50,
  solids: [{ kind: 'pure', species: 'sucrose', massG: 50 }],
  apart: [],
  massG: 100,
  drySolidsMassFraction: 0.5,
  dissolvedMassFraction: 0.5,
};

/** Solids of a sucrose syrup that boils at this temperature at sea level; `null` where none does. */
export function sucroseSolids(seaLevelC: number): number | null {
  const found = dissolvedAtBoil(soluteOf(SUCROSE_SYRUP), seaLevelC, SEA_LEVEL_PRESSURE_PA);
  return typeof found === 'number' ? found : null;
}

/** Where a sucrose syrup of these solids boils under a pressure, °C. */
export function sucroseBoilC(
  dissolvedMassFraction: number,
  pressurePa: number = SEA_LEVEL_PRESSURE_PA,
): number {
  const solute = soluteOf(SUCROSE_SYRUP);
  return boilingPointAt(dissolvedMassFraction, solute, pressurePa).boilingPointC;
}
