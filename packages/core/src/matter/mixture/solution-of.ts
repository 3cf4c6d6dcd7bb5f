import { requireWithin } from '../../foundation/validity/check.js';
import type { SpeciesId } from '../species.js';
import { assemble } from './assemble.js';
import type { Mixture } from './types.js';

/**
 * One pure substance in water, 100 g of it: what tables of sugar solutions mean by their per cent.
 *
 * @param species - The dissolved substance.
 * @param options - `drySolidsMassFraction`: its share of the mass, 0 to 1.
 * @returns a mixture of 100 g.
 * @throws {@link ModelRangeError} if the share lies outside 0 to 1.
 * @example
 * solutionOf('sucrose', { drySolidsMassFraction: 0.85 }).waterG // 15 g
 */
export function solutionOf(
  species: SpeciesId,
  { drySolidsMassFraction }: { readonly drySolidsMassFraction: number },
): Mixture {
  requireWithin('drySolidsMassFraction', drySolidsMassFraction, [0, 1]);
  const massG = 100 * drySolidsMassFraction;
  return assemble(100 - massG, [{ kind: 'pure', species, massG }], []);
}
