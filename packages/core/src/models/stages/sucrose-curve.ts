import { SEA_LEVEL_PRESSURE_PA } from '../../matter/air/standard-pressure.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { boilingPointAt } from '../boiling/boiling-point.js';
import { dissolvedAtBoil } from '../boiling/dry-solids-at-boil.js';
import { REFERENCE_SOLUTE } from '../boiling/parameters.js';
import type { Solute } from '../boiling/solute.js';

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
  const found = dissolvedAtBoil(sucrose(), seaLevelC, SEA_LEVEL_PRESSURE_PA);
  return typeof found === 'number' ? found : null;
}

/** Where a sucrose syrup of these solids boils under a pressure, °C. */
export function sucroseBoilC(
  dissolvedMassFraction: number,
  pressurePa: number = SEA_LEVEL_PRESSURE_PA,
): number {
  return boilingPointAt(dissolvedMassFraction, sucrose(), pressurePa).boilingPointC;
}

/** What `soluteOf` makes of the syrup, without the tables of everything it is not. */
function sucrose(): Solute {
  const [molarMassGPerMol, interaction, interactionPlusMinus] = REFERENCE_SOLUTE.rows.sucrose;
  return {
    massG: 50,
    inverseMolarMass: 1 / molarMassGPerMol,
    interaction,
    interactionPlusMinus,
    polyolShare: 0,
    holdsSucrose: true,
    warnings: [],
  };
}
