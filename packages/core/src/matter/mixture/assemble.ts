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
  const mergedSolids = mergeSolids(solids);
  const mergedApart = mergeApart(apart);
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

function mergeSolids(solids: readonly Solid[]): readonly Solid[] {
  const merged: Solid[] = [];
  for (const solid of solids) {
    if (solid.massG === 0) continue;
    const at =
      solid.kind === 'pure'
        ? merged.findIndex((one) => one.kind === 'pure' && one.species === solid.species)
        : -1;
    const known = merged[at];
    if (known === undefined) merged.push(solid);
    else merged[at] = { ...known, massG: known.massG + solid.massG };
  }
  return merged;
}

function mergeApart(apart: readonly Apart[]): readonly Apart[] {
  const merged: Apart[] = [];
  for (const { kind, massG } of apart) {
    if (massG === 0) continue;
    const at = merged.findIndex((one) => one.kind === kind);
    const known = merged[at];
    if (known === undefined) merged.push({ kind, massG });
    else merged[at] = { kind, massG: known.massG + massG };
  }
  return merged;
}

function totalG(parts: readonly { readonly massG: number }[]): number {
  return parts.reduce((sum, part) => sum + part.massG, 0);
}
