import type { None } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { ROUNDING_SHARE, requireStrength, SYRUP_MASS_DOMAIN_G } from './require-syrup.js';
import type { DryStrength } from './types.js';

/** The water of the recipe once the swap is made. */
export type WaterAfter = {
  /** More (above zero) or less water beside it, g. */
  readonly waterChangeG: number;
  /** Water the recipe then asks for, g. */
  readonly recipeWaterG: number;
};

/** What to weigh of the powder, and the water beside it. */
export type SwappedForDried = WaterAfter & { readonly driedG: number };
/** What to weigh of the syrup, and the water beside it. */
export type SwappedForSyrup = WaterAfter & { readonly syrupG: number };

/** What comes in brings more water than the recipe can leave out. */
export type NoSwap = None<'too-little-water'> & {
  /** What would still have to boil away, g. */
  readonly waterShortG: number;
};

/**
 * Dried glucose syrup in place of a syrup in a recipe: the same dry solids, the same water in all.
 *
 * Take a powder of the same dextrose equivalent and cut, or the sweet is another one. The water the
 * syrup brought has to be weighed now.
 *
 * @equation m_dried = m·s / s_dried, water + (m − m_dried)
 * @param swap - `syrupG`, g, in the recipe; dry solids of `syrup` and of `dried`, 0.01 to 1;
 *   `recipeWaterG`: water the recipe already asks for, g.
 * @returns `driedG`, `waterChangeG` and `recipeWaterG`, g; or `none` where a powder wetter than the
 *   syrup brings more water than the recipe has.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * swapSyrupForDried({
 *   syrupG: 300,
 *   syrup: { drySolidsMassFraction: 0.803 },
 *   dried: { drySolidsMassFraction: 0.96 },
 *   recipeWaterG: 100,
 * }).recipeWaterG // 149.06 g
 * @source definition
 */
export function swapSyrupForDried({
  syrupG,
  syrup,
  dried,
  recipeWaterG,
}: {
  readonly syrupG: number;
  readonly syrup: DryStrength;
  readonly dried: DryStrength;
  readonly recipeWaterG: number;
}): SwappedForDried | NoSwap {
  requireWithin('syrupG', syrupG, SYRUP_MASS_DOMAIN_G);
  requireStrength(syrup);
  requireStrength(dried);
  const driedG = (syrupG * syrup.drySolidsMassFraction) / dried.drySolidsMassFraction;
  const water = waterAfter(recipeWaterG, syrupG, driedG);
  return 'reason' in water ? water : { driedG, ...water };
}

/**
 * Glucose syrup in place of dried glucose syrup in a recipe: the same dry solids, the same water.
 *
 * The syrup brings its own water, which comes off the water of the recipe. Where the recipe has
 * less, there is no such swap: the batch would hold more water than it was meant to, and boil longer.
 *
 * @equation m_syrup = m·s / s_syrup, water − (m_syrup − m)
 * @param swap - `driedG`, g, in the recipe; dry solids of `dried` and of `syrup`, 0.01 to 1;
 *   `recipeWaterG`: water the recipe asks for, g.
 * @returns `syrupG`, `waterChangeG` and `recipeWaterG`, g; or `none` where the recipe has less water
 *   than must come out, and how much less.
 * @throws {@link ModelRangeError} outside the domains.
 * @example
 * swapDriedForSyrup({
 *   driedG: 250.94,
 *   dried: { drySolidsMassFraction: 0.96 },
 *   syrup: { drySolidsMassFraction: 0.803 },
 *   recipeWaterG: 100,
 * }).recipeWaterG // 50.94 g
 * @source definition
 */
export function swapDriedForSyrup({
  driedG,
  dried,
  syrup,
  recipeWaterG,
}: {
  readonly driedG: number;
  readonly dried: DryStrength;
  readonly syrup: DryStrength;
  readonly recipeWaterG: number;
}): SwappedForSyrup | NoSwap {
  requireWithin('driedG', driedG, SYRUP_MASS_DOMAIN_G);
  requireStrength(dried);
  requireStrength(syrup);
  const syrupG = (driedG * dried.drySolidsMassFraction) / syrup.drySolidsMassFraction;
  const water = waterAfter(recipeWaterG, driedG, syrupG);
  return 'reason' in water ? water : { syrupG, ...water };
}

/** Whatever goes out lighter than what comes in has to be made up by water, and the other way. */
function waterAfter(waterG: number, outG: number, inG: number): WaterAfter | NoSwap {
  requireWithin('recipeWaterG', waterG, SYRUP_MASS_DOMAIN_G);
  const waterChangeG = outG - inG;
  const recipeWaterG = waterG + waterChangeG;
  if (recipeWaterG < -inG * ROUNDING_SHARE) {
    return { kind: 'none', reason: 'too-little-water', waterShortG: -recipeWaterG };
  }
  return { waterChangeG, recipeWaterG: Math.max(0, recipeWaterG) };
}
