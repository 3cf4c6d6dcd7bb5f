import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';

/** Sugar alcohols that crystallise. How fast, nobody has printed. */
const CRYSTAL_POLYOLS: readonly SpeciesId[] = [
  'isomalt',
  'maltitol',
  'xylitol',
  'sorbitol',
  'mannitol',
  'erythritol',
  'lactitol',
];

/** Sugars other than sucrose that crystallise. */
const OTHER_SUGARS: readonly SpeciesId[] = [
  'glucose',
  'fructose',
  'maltose',
  'lactose',
  'trehalose',
  'isomaltulose',
  'allulose',
  'tagatose',
];

/**
 * What might crystallise in place of sucrose, g: the sugar alcohols together, as they make a
 * sugar-free mass, or the largest other sugar.
 */
export function largestRivalG({ solids }: Mixture): number {
  const pure = solids.filter((solid) => solid.kind === 'pure');
  const polyolsG = totalG(pure.filter(({ species }) => CRYSTAL_POLYOLS.includes(species)));
  const sugarsG = pure
    .filter(({ species }) => OTHER_SUGARS.includes(species))
    .map(({ massG }) => massG);
  return Math.max(polyolsG, ...sugarsG, 0);
}
