import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { ingredient as knownIngredient } from '../ingredients/ingredient.js';
import type { Ingredient } from '../ingredients/types.js';
import type { ApartKind, SpeciesId } from '../species.js';
import { syrupSolids } from './syrup-solids.js';
import type { Apart, Part, Solid } from './types.js';

/** More than any pan holds: a thousand tonnes. */
export const PART_MASS_DOMAIN_G: Span = [0, 1_000_000_000];

/** What one weighed ingredient brings into the pan. */
export type Content = {
  readonly waterG: number;
  readonly solids: readonly Solid[];
  readonly apart: readonly Apart[];
};

/** @throws ModelRangeError if a number cannot be meant or does not belong to this ingredient. */
export function contentOfPart(part: Part): Content {
  const record: Ingredient =
    typeof part.ingredient === 'string' ? knownIngredient(part.ingredient) : part.ingredient;
  requireWithin('massG', part.massG, PART_MASS_DOMAIN_G);
  const dry = part.drySolidsMassFraction ?? record.drySolidsMassFraction.value;
  requireWithin('drySolidsMassFraction', dry, [0, 1]);
  const dryG = part.massG * dry;
  const waterG = part.massG - dryG;
  if (record.dextroseEquivalent !== undefined) {
    return { waterG, solids: [syrupSolids(part, record, dryG)], apart: [] };
  }
  refuseSyrupWords(part);
  const solids = Object.entries(record.solids ?? {}) as readonly [SpeciesId, number][];
  const apart = Object.entries(record.apart ?? {}) as readonly [ApartKind, number][];
  if (dryG > 0) {
    let sum = 0;
    for (const [name, share] of [...solids, ...apart]) {
      requireWithin(name, share, [0, 1]);
      sum += share;
    }
    requireWithin('sumOfShares', sum, [1 - 1e-6, 1 + 1e-6]);
  }
  return {
    waterG,
    solids: solids.map(([species, share]) => ({ kind: 'pure', species, massG: dryG * share })),
    apart: apart.map(([kind, share]) => ({ kind, massG: dryG * share })),
  };
}

/** Only starch syrups have a dextrose equivalent a cook can state. */
function refuseSyrupWords(part: Part): void {
  for (const parameter of ['dextroseEquivalent', 'conversion', 'profile'] as const) {
    const received = part[parameter];
    if (received !== undefined) {
      throw new ModelRangeError(
        `${parameter} belongs to starch syrups only; received it for ${named(part)}.`,
        { code: 'not-allowed-together', parameter, received },
      );
    }
  }
}

function named(part: Part): string {
  return typeof part.ingredient === 'string' ? part.ingredient : 'an ingredient of your own';
}
