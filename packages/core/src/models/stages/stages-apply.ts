import type { CitedConstants } from '../../foundation/validity/constants.js';
import type { Mixture } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';

/** How much of a mass must be what the stages were named for. */
export const STAGE_NAME_CONSTANTS = {
  leastSugarOfSolids: { value: 0.6, source: 'assumption', grade: 'assumed' },
  mostPolyolOfSolids: { value: 0.1, source: 'assumption', grade: 'assumed' },
} as const satisfies CitedConstants;

const POLYOLS = [
  'isomalt',
  'maltitol',
  'xylitol',
  'sorbitol',
  'mannitol',
  'erythritol',
  'lactitol',
  'glycerol',
  'hydrogenated-oligosaccharides',
] as const satisfies readonly SpeciesId[];

/**
 * Whether stage names mean anything for a mass.
 *
 * They name the feel of cooled sucrose, with or without glucose syrup. Sugar alcohols at the same
 * solids are softer by tens of degrees: 90 isomalt to 10 xylitol at the solids of hard crack is a
 * puddle in a warm room. Ask for a glass transition there.
 *
 * @param mixture - What is in the pan.
 * @returns `apply`, and the shares of the dissolved solids it rests on, 0 to 1: sucrose and starch
 *   syrup together, sugar alcohols together. The names apply from 0.6 of the first and up to 0.1 of
 *   the second.
 * @example
 * stagesApply(solutionOf('isomalt', { drySolidsMassFraction: 0.8 })).apply // false
 * @source assumption
 */
export function stagesApply({ solids }: Mixture): {
  readonly apply: boolean;
  readonly sugarAndSyrupShare: number;
  readonly polyolShare: number;
} {
  const polyols: readonly SpeciesId[] = POLYOLS;
  let solidsG = 0;
  let sugarG = 0;
  let polyolG = 0;
  for (const solid of solids) {
    solidsG += solid.massG;
    if (solid.kind === 'saccharides' || solid.species === 'sucrose') sugarG += solid.massG;
    else if (polyols.includes(solid.species)) polyolG += solid.massG;
  }
  const sugar = solidsG > 0 ? sugarG / solidsG : 0;
  const polyol = solidsG > 0 ? polyolG / solidsG : 0;
  const { leastSugarOfSolids, mostPolyolOfSolids } = STAGE_NAME_CONSTANTS;
  return {
    apply: sugar >= leastSugarOfSolids.value && polyol <= mostPolyolOfSolids.value,
    sugarAndSyrupShare: sugar,
    polyolShare: polyol,
  };
}
