import type { Mixture } from '../mixture/types.js';
import { acidsByName, acidsOfMixture } from './acid-masses.js';
import { ACIDS } from './constants.js';
import type { AcidMasses } from './types.js';

/**
 * How much acid lye would find, counted as citric acid.
 *
 * This is what a juice or a recipe states as its acid, and near what the tongue follows. It says
 * nothing of inversion: two masses with the same figure can differ tenfold there, by their pH.
 * Cream of tartar has one proton left of two, sodium citrate and lactate none, and bicarbonate
 * takes one away.
 *
 * @equation m = Σ nᵢ·mᵢ/Mᵢ · 192.12/3
 * @param of - A mixture, or g of each acid, dry and without crystal water.
 * @returns `citricEquivalentG`, g of citric acid without crystal water; below zero where there is
 *   more bicarbonate than acid.
 * @throws {@link ModelRangeError} for a mass that cannot be meant or an acid nothing is known of.
 * @example
 * titratableAcidity({ 'malic-acid': 1.047 }).citricEquivalentG // 1.000 g
 * @source definition
 */
export function titratableAcidity(of: Mixture | AcidMasses): {
  readonly citricEquivalentG: number;
} {
  const mol = weighed(of).reduce(
    (sum, { acid, massG }) => sum + (acid.titratablePerMole * massG) / acid.molarMassGPerMol.value,
    0,
  );
  const { molarMassGPerMol, titratablePerMole } = ACIDS['citric-acid'];
  return { citricEquivalentG: (mol * molarMassGPerMol.value) / titratablePerMole };
}

export function weighed(of: Mixture | AcidMasses): ReturnType<typeof acidsOfMixture> {
  return isMixture(of) ? acidsOfMixture(of) : acidsByName(of);
}

function isMixture(of: Mixture | AcidMasses): of is Mixture {
  return 'solids' in of;
}
