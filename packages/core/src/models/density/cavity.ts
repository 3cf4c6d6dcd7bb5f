import type { Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import {
  CANDY_DENSITY,
  CAVITY_DOMAIN_ML,
  candyMassDensity,
  type WeighedPiece,
} from './candy-mass.js';

/**
 * What a cavity filled level with hot mass weighs. An estimate.
 *
 * The mass shrinks by about three parts in a hundred as it cools and leaves a hollow; its weight
 * stays. Topping up or heaping is not counted. A piece that was weighed takes the place of the
 * estimate.
 *
 * @equation m = V · ρ_hot, V_cooled = V · ρ_hot/ρ_cooled
 * @param input - `cavityMl`, mL, 0 to 100 000; `weighedPiece`: mass, g, of a piece and the cavity,
 *   mL, it filled level.
 * @returns `massG` and `band`, g, and `cooledMl`, the room the piece takes once it is cold, mL.
 * @throws {@link ModelRangeError} outside the domain, or for a piece nothing cooked can weigh.
 * @example
 * pieceMassFromCavity({ cavityMl: 4 }).massG // 5.8 g
 * @source common-practice
 */
export function pieceMassFromCavity({
  cavityMl,
  weighedPiece,
}: {
  readonly cavityMl: number;
  readonly weighedPiece?: WeighedPiece | undefined;
}): {
  readonly massG: number;
  readonly band: Span;
  readonly cooledMl: number;
} {
  requireWithin('cavityMl', cavityMl, CAVITY_DOMAIN_ML);
  const { densityGPerMl, band } = candyMassDensity({ state: 'hot', weighedPiece });
  const { hot, cooled } = CANDY_DENSITY;
  return {
    massG: cavityMl * densityGPerMl,
    band: [cavityMl * band[0], cavityMl * band[1]],
    cooledMl: (cavityMl * hot.clear.value) / cooled.clear.value,
  };
}

/**
 * Which cavity makes a piece of a wanted mass, filled level with hot mass. An estimate.
 *
 * @equation V = m / ρ_hot
 * @param input - `massG`, g, 0 to 100 000; `weighedPiece`: mass, g, of a piece and the cavity, mL, it
 *   filled level, in place of the estimate.
 * @returns `cavityMl` and `band`, mL.
 * @throws {@link ModelRangeError} outside the domain, or for a piece nothing cooked can weigh.
 * @example
 * cavityFromPieceMass({ massG: 5.8 }).cavityMl // 4 mL
 * @source common-practice
 */
export function cavityFromPieceMass({
  massG,
  weighedPiece,
}: {
  readonly massG: number;
  readonly weighedPiece?: WeighedPiece | undefined;
}): {
  readonly cavityMl: number;
  readonly band: Span;
} {
  requireWithin('massG', massG, CAVITY_DOMAIN_ML);
  const { densityGPerMl, band } = candyMassDensity({ state: 'hot', weighedPiece });
  return { cavityMl: massG / densityGPerMl, band: [massG / band[1], massG / band[0]] };
}
