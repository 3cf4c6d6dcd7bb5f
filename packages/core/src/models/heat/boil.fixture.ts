import { isNone } from '../../foundation/results/is-none.js';
import type { None } from '../../foundation/results/types.js';
import { mixture } from '../../matter/mixture/mixture.js';
import type { Mixture } from '../../matter/mixture/types.js';

/** Sugar and water as they go into the pan. */
export function sugarAndWater(sucroseG = 1_000, waterG = 330): Mixture {
  return mixture([
    { ingredient: 'sucrose', massG: sucroseG },
    { ingredient: 'water', massG: waterG },
  ]);
}

/** A thousand watts that reach the pan. */
export const KILOWATT = { kind: 'resistance', powerW: 1_000 / 0.75 } as const;

/** The answer, where there must be one. */
export function answered<T extends object>(result: T | None): T {
  if (isNone(result)) throw new RangeError(`There is no answer: ${result.reason}.`);
  return result as T;
}
