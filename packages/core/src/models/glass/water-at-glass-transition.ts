import type { Checked, None, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { GLASS_CONSTANTS, GLASS_TESTED_WATER_MASS_FRACTION } from './constants.js';
import { glassPoint } from './glass-transition.js';

/** What `waterAtGlassTransition` answers. */
export type WaterAtGlass = Checked<{
  /** Water in the whole sweet, 0 to 1. */
  moistureMassFraction: number;
  /** Water on 100 g of the solids that are in solution, g. */
  waterGPer100GSolids: number;
  /** Of `moistureMassFraction`: within this about nine times in ten. */
  band: Span;
}>;

/** From the cold store to dry maltodextrin, °C. Water itself lies at −135. */
export const WATER_AT_GLASS_DOMAIN_C: Span = [-100, 250];

/**
 * How much water a recipe bears and still stays hard up to a temperature.
 *
 * The other way round than `glassTransition`: only the ratio of the solids counts, the water is what
 * is asked for. With the temperature of the store it is the critical water.
 *
 * @equation water/solids = (Tg,dry − Tg)/(k·(Tg − Tg,water)) (Gordon–Taylor solved for the water)
 * @param mixture - What the sweet is made of, with any amount of water.
 * @param options - `glassTransitionC`: °C up to which it is to stay hard, −100 to 250.
 * @returns `moistureMassFraction` of the whole, `waterGPer100GSolids` and the `band` of the first,
 *   with a warning over a tenth of water. Or `none`, `already-soft`, where the recipe softens below
 *   that without a drop of water.
 * @throws {@link ModelRangeError} outside the temperatures, and if nothing in the mixture has a known
 *   glass transition.
 * @example
 * const sweet = solutionOf('sucrose', { drySolidsMassFraction: 0.97 });
 * waterAtGlassTransition(sweet, { glassTransitionC: 25 }) // { moistureMassFraction: 0.04087… }
 * @source roos-1993, johari-1987
 */
export function waterAtGlassTransition(
  mixture: Mixture,
  { glassTransitionC }: { readonly glassTransitionC: number },
): WaterAtGlass | None<'already-soft'> {
  requireWithin('glassTransitionC', glassTransitionC, WATER_AT_GLASS_DOMAIN_C);
  const { dry } = glassPoint(mixture);
  if (dry.glassTransitionC <= glassTransitionC) return { kind: 'none', reason: 'already-soft' };
  const { waterGlassC } = GLASS_CONSTANTS;
  const waterG = (dryC: number): number =>
    (dry.massG * Math.max(0, dryC - glassTransitionC)) /
    (dry.k * (glassTransitionC - waterGlassC.value));
  const otherG = mixture.massG - mixture.waterG;
  const moisture = (inG: number): number => inG / (inG + otherG);
  const criticalG = waterG(dry.glassTransitionC);
  const { plusMinusK } = glassPoint({ ...mixture, waterG: criticalG });
  let solidsG = 0;
  for (const { massG } of mixture.solids) solidsG += massG;
  return {
    moistureMassFraction: moisture(criticalG),
    waterGPer100GSolids: (100 * criticalG) / solidsG,
    band: [
      moisture(waterG(dry.glassTransitionC - plusMinusK)),
      moisture(waterG(dry.glassTransitionC + plusMinusK)),
    ],
    warnings: [
      ...dry.warnings,
      ...warnOutside(
        'waterMassFraction',
        criticalG / (criticalG + dry.massG),
        GLASS_TESTED_WATER_MASS_FRACTION,
      ),
    ],
  };
}
