import type { None, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { ACID_WATER_DOMAIN_G, acidsOf } from './acid-masses.js';
import {
  balancedPH,
  charge,
  chargeLeftOver,
  constantsOf,
  dissolvedTartrateMol,
} from './charge-balance.js';
import { ACIDITY_DOMAIN_C, ACIDS, SODIUM_CITRATE_DIHYDRATE_G_PER_MOL } from './constants.js';
import type { AcidityOptions, AcidSource } from './types.js';
import { systemInWater } from './water-and-system.js';

/** Sour enough to taste of acid, and not near the syrup's own pH. */
export const BUFFER_DOMAIN_PH: Span = [1.5, 4.5];

/** How much buffer it takes. */
export type Buffer = {
  /** Dry, without crystal water, g. */
  readonly sodiumCitrateG: number;
  /** The same, as it is sold with two crystal waters, g. */
  readonly dihydrateG: number;
  /** What it was before. */
  readonly pHBefore: number;
};

/**
 * How much sodium citrate tames an acid, so that it stays as sour to taste and inverts less.
 *
 * Sourness follows how much acid there is, inversion the pH: a unit higher inverts ten times less.
 * So a mass that has to stay hot with its acid in it, for depositing, gets a buffer with it. Ask
 * with the water of the **cooked** mass: that is where the acid sits.
 *
 * @equation n = −([H] + [Na, K] − Kw/[H] − Σ c·z)/(3 − z of citrate), at the wanted [H]
 * @param of - A mixture, or `waterG` with `acids`: g of each, dry and without crystal water.
 * @param options - `targetPH` 1.5 to 4.5, 3.0 by default; `alkalinityMmolPerL` 0 to 50 of
 *   `tapWaterG`; `temperatureC` 0 to 200, 25 by default.
 * @returns `sodiumCitrateG` and `dihydrateG`, g, and `pHBefore`; `none` if the water is no sourer
 *   than wanted.
 * @throws {@link ModelRangeError} outside the domains, without water, or for an acid nothing is
 *   known of.
 * @example
 * const tamed = bufferForPH({ waterG: 25, acids: { 'citric-acid': 10 } });
 * isNone(tamed) ? tamed.reason : tamed.sodiumCitrateG // 2.30 g
 * @source bates-pinching-1949, acid-constant-tables
 */
export function bufferForPH(
  of: AcidSource,
  options: AcidityOptions & { readonly targetPH?: number | undefined } = {},
): Buffer | None<'already-above'> {
  const { waterG } = of;
  const { targetPH = 3, temperatureC = 25 } = options;
  requireWithin('waterG', waterG, ACID_WATER_DOMAIN_G);
  requireWithin('targetPH', targetPH, BUFFER_DOMAIN_PH);
  requireWithin('temperatureC', temperatureC, ACIDITY_DOMAIN_C);
  const system = systemInWater(acidsOf(of), waterG, options);
  const waterKg = waterG / 1_000;
  const pHBefore = balancedPH(system, waterKg, temperatureC);
  if (pHBefore >= targetPH) return { kind: 'none', reason: 'already-above' };
  const { molarMassGPerMol, cationsPerMole } = ACIDS['sodium-citrate'];
  const tartrateMol = dissolvedTartrateMol(system, waterKg, temperatureC);
  const h = 10 ** -targetPH;
  const [excess] = chargeLeftOver(system, { waterKg, tartrateMol }, h);
  const [citrateCharge] = charge(constantsOf('sodium-citrate'), h);
  const mol = (-excess * waterKg) / (cationsPerMole - citrateCharge);
  return {
    sodiumCitrateG: mol * molarMassGPerMol.value,
    dihydrateG: mol * SODIUM_CITRATE_DIHYDRATE_G_PER_MOL.value,
    pHBefore,
  };
}
