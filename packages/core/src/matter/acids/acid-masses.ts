import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import type { Mixture } from '../mixture/types.js';
import { ACIDS, type Acid } from './constants.js';
import type { AcidMasses, AcidSource, AcidSpecies } from './types.js';

/** More than any pan holds: a thousand tonnes. */
export const ACID_MASS_DOMAIN_G: Span = [0, 1_000_000_000];

/** A drop at least: without water there is no pH. */
export const ACID_WATER_DOMAIN_G: Span = [0.001, 1_000_000_000];

/** One acid and how much of it there is. */
export type WeighedAcid = {
  readonly species: AcidSpecies;
  readonly acid: Acid;
  readonly massG: number;
};

/** The acids of a mixture; everything else in it is passed over. */
export function acidsOfMixture({ solids }: Mixture): readonly WeighedAcid[] {
  const found: WeighedAcid[] = [];
  for (const solid of solids) {
    if (solid.kind === 'pure' && isAcid(solid.species)) {
      found.push({
        species: solid.species,
        acid: ACIDS[solid.species],
        massG: solid.massG,
      });
    }
  }
  return found;
}

/** @throws ModelRangeError for a mass that cannot be meant, or an acid nothing is known of. */
export function acidsByName(masses: AcidMasses): readonly WeighedAcid[] {
  return (Object.entries(masses) as [string, number | undefined][]).flatMap(([name, massG]) => {
    requireAcid('acids', name);
    if (massG === undefined) return [];
    requireWithin('massG', massG, ACID_MASS_DOMAIN_G);
    return [{ species: name, acid: ACIDS[name], massG }];
  });
}

export function acidsOf(source: AcidSource): readonly WeighedAcid[] {
  return 'solids' in source ? acidsOfMixture(source) : acidsByName(source.acids);
}

/** @throws ModelRangeError for an acid nothing is known of. */
export function requireAcid(parameter: string, name: string): asserts name is AcidSpecies {
  if (isAcid(name)) return;
  throw unknownName(parameter, name, `${name} is no acid or salt of one with a known constant`);
}

function isAcid(name: string): name is AcidSpecies {
  return Object.hasOwn(ACIDS, name);
}
