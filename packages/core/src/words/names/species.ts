import type { SpeciesId } from '../../matter/species.js';
import type { Catalogue } from '../types.js';

/** What a pure substance is called where people read what a mass is made of. */
export const SPECIES_NAMES = {
  'syrup-solids': 'starch syrup solids',
  sucrose: 'sucrose',
  glucose: 'glucose',
  fructose: 'fructose',
  maltose: 'maltose',
  lactose: 'lactose',
  trehalose: 'trehalose',
  isomaltulose: 'isomaltulose',
  allulose: 'allulose',
  tagatose: 'tagatose',
  'syrup-oligosaccharides': 'longer syrup sugars',
  isomalt: 'isomalt',
  maltitol: 'maltitol',
  xylitol: 'xylitol',
  sorbitol: 'sorbitol',
  mannitol: 'mannitol',
  erythritol: 'erythritol',
  lactitol: 'lactitol',
  glycerol: 'glycerol',
  'propylene-glycol': 'propylene glycol',
  'hydrogenated-oligosaccharides': 'longer sugar alcohols',
  polydextrose: 'polydextrose',
  inulin: 'inulin',
  'citric-acid': 'citric acid',
  'malic-acid': 'malic acid',
  'tartaric-acid': 'tartaric acid',
  'lactic-acid': 'lactic acid',
  'potassium-hydrogen-tartrate': 'cream of tartar',
  'sodium-citrate': 'sodium citrate',
  'sodium-lactate': 'sodium lactate',
  'sodium-bicarbonate': 'sodium bicarbonate',
  'sodium-chloride': 'salt',
  sucralose: 'sucralose',
  'acesulfame-k': 'acesulfame-K',
  aspartame: 'aspartame',
  saccharin: 'saccharin',
  'steviol-glycosides': 'steviol glycosides',
  protein: 'protein',
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
    ? SPECIES_NAMES[id as SpeciesId]
    : id.replaceAll('-', ' ');
}
