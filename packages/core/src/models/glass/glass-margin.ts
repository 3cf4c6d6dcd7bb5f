import { around } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { glassTransition } from './glass-transition.js';

/** What `glassMargin` answers. */
export type GlassMargin = Checked<{
  /** Glass transition over the store, K; below nought it is soft there. */
  marginK: number;
  /** °C. */
  glassTransitionC: number;
  /** Of `marginK`: within this about nine times in ten. */
  band: Span;
}>;

/** From the freezer to a car in the sun, °C. */
export const STORE_DOMAIN_C: Span = [-40, 60];

/**
 * How much warmer the store may get before the sweet turns soft.
 *
 * Judge it with its band: a sweet fails only if even the high end lies below nought. About 15 K is
 * a comfortable reserve, for the error of the model, half a part in a hundred of water taken up, and
 * a hot afternoon.
 *
 * @equation margin = Tg − store
 * @param mixture - What the sweet is made of, with its water.
 * @param options - `storeC`: the warmest the store gets, °C, −40 to 60.
 * @returns `marginK`, `glassTransitionC`, and the `band` of the margin; warnings of the glass model.
 * @throws {@link ModelRangeError} outside the temperatures, and if nothing in the mixture has a known
 *   glass transition.
 * @example
 * glassMargin(solutionOf('sucrose', { drySolidsMassFraction: 0.98 }), { storeC: 25 }).marginK // 17.36 K
 * @source roos-1993
 */
export function glassMargin(
  mixture: Mixture,
  { storeC }: { readonly storeC: number },
): GlassMargin {
  requireWithin('storeC', storeC, STORE_DOMAIN_C);
  const { glassTransitionC, band, warnings } = glassTransition(mixture);
  const marginK = glassTransitionC - storeC;
  return { marginK, glassTransitionC, band: around(marginK, (band[1] - band[0]) / 2), warnings };
}
