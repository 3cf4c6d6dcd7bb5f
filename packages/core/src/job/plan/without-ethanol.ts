import { totalG } from '../../matter/mixture/assemble.js';
import { combine } from '../../matter/mixture/index.js';
import type { Mixture } from '../../matter/mixture/types.js';

/** The mass once its alcohol has flashed off: at the boil, or on the hot mass, none is kept. */
export function withoutEthanol(mixed: Mixture): Mixture {
  const apart = mixed.apart.filter(({ kind }) => kind !== 'ethanol');
  if (apart.length === mixed.apart.length) return mixed;
  const lostG = mixed.massG - totalG(apart) - totalG(mixed.solids) - mixed.waterG;
  return combine([{ ...mixed, apart, massG: mixed.massG - lostG }]);
}

/** Everything weighed that is not water, g. */
export function drySolidsG(mixed: Mixture): number {
  return totalG(mixed.solids) + totalG(mixed.apart);
}
