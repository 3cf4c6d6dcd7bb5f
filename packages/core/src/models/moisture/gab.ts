import { findRoot } from '../../foundation/numeric/find-root.js';
import type { Isotherm } from './isotherms.js';

/** An isotherm with its share of the dissolved solids. */
export type IsothermShare = { readonly share: number; readonly isotherm: Isotherm };

/**
 * Water on a mixed glass: each part takes up what it would take up alone.
 *
 * @equation m = Σ xᵢ·m₀ᵢ·Cᵢ·Kᵢ·aw/((1 − Kᵢ·aw)·(1 − Kᵢ·aw + Cᵢ·Kᵢ·aw))
 * @returns grams of water on one gram of solids; endless from the humidity at which a part drowns.
 */
export function waterOnGlass(parts: readonly IsothermShare[], waterActivity: number): number {
  let sum = 0;
  for (const { share, isotherm } of parts) {
    const { monolayerGPer100G: m0, c: C, k: K } = isotherm;
    const ka = K * waterActivity;
    if (ka >= 1) return Number.POSITIVE_INFINITY;
    sum += (share * m0 * C * ka) / ((1 - ka) * (1 - ka + C * ka));
  }
  return sum / 100;
}

/** The water activity at which a mixed glass holds so much water, g on one gram of solids. */
export function activityOnGlass(parts: readonly IsothermShare[], waterGPerG: number): number {
  if (waterGPerG === 0) return 0;
  let steepest = 1;
  for (const { isotherm } of parts) steepest = Math.max(steepest, isotherm.k);
  // Just short of the pole the curve holds hundreds of grams, more than anybody asks for.
  const wettest = (1 - 1e-9) / steepest;
  if (waterOnGlass(parts, wettest) <= waterGPerG) return wettest;
  return findRoot((aw) => waterOnGlass(parts, aw) - waterGPerG, [0, wettest], { tolerance: 1e-12 });
}
