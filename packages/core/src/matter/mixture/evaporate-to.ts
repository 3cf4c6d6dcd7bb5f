import { requireWithin } from '../../foundation/validity/check.js';
import { assemble } from './assemble.js';
import type { Mixture } from './types.js';

/**
 * The same solids with less water: what is left when steam has gone.
 *
 * Only water leaves; alcohol and oil stay on the books. It does not add water: to make a mass
 * wetter, combine it with some.
 *
 * @param from - What is in the pan.
 * @param options - `drySolidsMassFraction`: everything but water, from what it is now to 1.
 * @returns the drier mixture, lighter by the steam.
 * @throws {@link ModelRangeError} if the target is wetter than the mixture, or it holds water only.
 * @example
 * evaporateTo(solutionOf('sucrose', { drySolidsMassFraction: 0.75 }), {
 *   drySolidsMassFraction: 0.975,
 * }).massG // 76.92 g
 */
export function evaporateTo(
  from: Mixture,
  { drySolidsMassFraction }: { readonly drySolidsMassFraction: number },
): Mixture {
  const dryG = from.massG - from.waterG;
  // Water alone has nothing to leave behind: it can only stay what it is.
  const driest = dryG > 0 ? 1 : 0;
  requireWithin('drySolidsMassFraction', drySolidsMassFraction, [
    // Rounding in the last digit is not a wish for water.
    from.drySolidsMassFraction * (1 - 1e-12),
    driest,
  ]);
  if (drySolidsMassFraction <= from.drySolidsMassFraction) return from;
  const waterG = (dryG * (1 - drySolidsMassFraction)) / drySolidsMassFraction;
  return assemble(waterG, from.solids, from.apart);
}
