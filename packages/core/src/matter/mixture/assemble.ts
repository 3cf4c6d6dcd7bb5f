import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import type { Apart, Mixture, Solid } from './types.js';

/**
 * Makes a mixture of what was counted out: pure substances and things apart are merged in the order
 * they first appear, syrups stay as they are, and the totals are worked out once.
 *
 * @throws ModelRangeError if nothing weighs anything.
 */
export function assemble(
  waterG: number,
  solids: readonly Solid[],
  apart: readonly Apart[],
): Mixture {
  const mergedSolids = merge(solids, isSameSolid);
  const mergedApart = merge(apart, (a, b) => a.kind === b.kind);
  const dissolvedG = totalG(mergedSolids);
  const dryG = dissolvedG + totalG(mergedApart);
  const massG = waterG + dryG;
  if (!(massG > 0)) {
    throw new ModelRangeError(`A mixture must weigh something; received ${massG} g.`, {
      code: 'outside-range',
      parameter: 'massG',
      received: massG,
      limits: [0, Infinity],
    });
  }
  const solutionG = waterG + dissolvedG;
  return {
    waterG,
    solids: mergedSolids,
    apart: mergedApart,
    massG,
    drySolidsMassFraction: dryG / massG,
    dissolvedMassFraction: solutionG > 0 ? dissolvedG / solutionG : 0,
  };
}

function merge<T extends { readonly massG: number }>(
  parts: readonly T[],
  isSame: (a: T, b: T) => boolean,
): readonly T[] {
  const merged: T[] = [];
  for (const part of parts) {
    if (part.massG === 0) continue;
    const at = merged.findIndex((known) => isSame(known, part));
    const known = merged[at];
    if (known === undefined) merged.push(part);
    else merged[at] = { ...known, massG: known.massG + part.massG };
  }
  return merged;
}

function isSameSolid(a: Solid, b: Solid): boolean {
  return a.kind === 'pure' && b.kind === 'pure' && a.species === b.species;
}

/** Sum of masses, g. */
export function totalG(parts: readonly { readonly massG: number }[]): number {
  return parts.reduce((sum, part) => sum + part.massG, 0);
}
