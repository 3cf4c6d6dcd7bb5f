import type { SpeciesId } from '../../matter/species.js';
import type { Catalogue } from '../types.js';

/** What a pure substance is called where people read what a mass is made of. */
export const SPECIES_NAMES = {
  'syrup-solids': 'starch syrup solids',
  saccharides: 'starch syrup solids',
  'syrup-oligosaccharides': 'longer syrup sugars',
  'hydrogenated-oligosaccharides': 'longer sugar alcohols',
  'potassium-hydrogen-tartrate': 'cream of tartar',
  'sodium-chloride': 'salt',
  'acesulfame-k': 'acesulfame-K',
  ash: 'minerals',
} as const satisfies Catalogue['species'];

/**
 * The plain name of a pure substance.
 *
 * @param id - A species, or `syrup-solids`; anything else stays as it is.
 * @example
 * speciesName('sodium-chloride') // 'salt'
 */
export function speciesName(id: SpeciesId | 'syrup-solids' | (string & {})): string {
  return Object.hasOwn(SPECIES_NAMES, id)
    ? SPECIES_NAMES[id as keyof typeof SPECIES_NAMES]
    : id.replaceAll('-', ' ');
}
