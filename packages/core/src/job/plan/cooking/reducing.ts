import type { Mixture } from '../../../matter/mixture/types.js';
import type { SpeciesId } from '../../../matter/species.js';

const REDUCING: readonly SpeciesId[] = [
  'glucose',
  'fructose',
  'maltose',
  'lactose',
  'isomaltulose',
  'allulose',
  'tagatose',
  'syrup-oligosaccharides',
  'protein',
];

/** Sugars with a free end, or milk: they brown on another slope than sucrose alone. */
export function isReducing({ solids }: Mixture): boolean {
  return solids.some(
    (solid) =>
      solid.massG > 0 && (solid.kind === 'saccharides' || REDUCING.includes(solid.species)),
  );
}
