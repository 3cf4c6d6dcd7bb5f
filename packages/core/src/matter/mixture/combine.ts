import { requireWithin } from '../../foundation/validity/check.js';
import { assemble } from './assemble.js';
import type { Mixture } from './types.js';

/**
 * Several masses in one pan: the base and what goes in later.
 *
 * @param mixtures - What is put together, in order.
 * @returns their sum; the same pure substance is merged, syrups are not.
 * @throws {@link ModelRangeError} if there is nothing to combine.
 * @example
 * combine([
 *   solutionOf('sucrose', { drySolidsMassFraction: 1 }),
 *   solutionOf('sucrose', { drySolidsMassFraction: 0 }),
 * ]).drySolidsMassFraction // 0.5
 */
export function combine(mixtures: readonly Mixture[]): Mixture {
  return assemble(
    mixtures.reduce((sum, one) => sum + one.waterG, 0),
    mixtures.flatMap((one) => one.solids),
    mixtures.flatMap((one) => one.apart),
  );
}

/**
 * The same mass, more or less of it.
 *
 * @param of - The mixture.
 * @param factor - How many times as much, over 0 to 10⁹.
 * @returns the mixture with every mass multiplied; its fractions do not change.
 * @throws {@link ModelRangeError} if the factor leaves nothing or cannot be meant.
 * @example
 * scaleMixture(solutionOf('sucrose', { drySolidsMassFraction: 0.8 }), 2).massG // 200 g
 */
export function scaleMixture(of: Mixture, factor: number): Mixture {
  requireWithin('factor', factor, [0, 1_000_000_000]);
  return assemble(
    of.waterG * factor,
    of.solids.map((solid) => ({ ...solid, massG: solid.massG * factor })),
    of.apart.map((one) => ({ ...one, massG: one.massG * factor })),
  );
}
