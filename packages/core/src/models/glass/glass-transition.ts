import { around } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { warnOutside } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import {
  GLASS_BAND_CONSTANTS,
  GLASS_CONSTANTS,
  GLASS_TESTED_WATER_MASS_FRACTION,
} from './constants.js';
import { type DryMixture, dryMixture } from './dry-mixture.js';

/** Up to where a sweet stays glass. */
export type GlassTransition = { readonly glassTransitionC: number; readonly band: Span };

/**
 * The warmth up to which a boiled sweet stays hard; above it, it slowly turns back into syrup.
 *
 * Each part in a hundred of water costs about 10 K. Starch syrup at equal water raises the figure a
 * little, invert sugar and small sugar alcohols lower it much. Fat, oil, alcohol and pigment play
 * no part; salts, intense sweeteners, protein and ash have no known value and are left out with a
 * warning that names their share. Crystals are another matter: this is about the glass between them.
 *
 * @equation 1/Tg,dry = Σ xᵢ/Tgᵢ (Fox, kelvin); Tg = (wₛ·Tg,dry + k·w·Tg,water) / (wₛ + k·w)
 *   (Gordon–Taylor), k = Σ xᵢ·(0.0293·Tgᵢ + 3.61), 6 for long chains; starch syrup solids
 *   Tg = 274.4 − 50.26·DE^0.343
 * @param mixture - What the sweet is made of, with its water.
 * @returns `glassTransitionC` and `band`, °C: ±4 K for one sugar, ±5 for a dry mixture, ±8 for a
 *   boiled sweet with its water, wider where a part is badly known; warnings over a tenth of water
 *   and outside DE 5 to 100.
 * @throws {@link ModelRangeError} if nothing in the mixture has a known glass transition.
 * @example
 * glassTransition(
 *   mixture([
 *     { ingredient: 'sucrose', massG: 58.8 },
 *     { ingredient: 'dried-glucose-syrup', massG: 39.2, drySolidsMassFraction: 1 },
 *     { ingredient: 'water', massG: 2 },
 *   ]),
 * ).glassTransitionC // 52.26 °C
 * @source mouritsen-styrbaek-2017, roos-1993, roos-karel-1991, syrup-glass-fit, johari-1987
 */
export function glassTransition(mixture: Mixture): Checked<GlassTransition> {
  const { dry, waterMassFraction, glassTransitionC, plusMinusK } = glassPoint(mixture);
  return {
    glassTransitionC,
    band: around(glassTransitionC, plusMinusK),
    warnings: [
      ...dry.warnings,
      ...warnOutside('waterMassFraction', waterMassFraction, GLASS_TESTED_WATER_MASS_FRACTION),
    ],
  };
}

/** The glass transition with what it was made of, for the other files of this folder. */
export type GlassPoint = {
  readonly dry: DryMixture;
  /** Water in water and what is modelled, 0 to 1. */
  readonly waterMassFraction: number;
  readonly glassTransitionC: number;
  /** Half-width of the band, K. */
  readonly plusMinusK: number;
};

/** @throws ModelRangeError if nothing in the mixture has a known glass transition. */
export function glassPoint(mixture: Mixture): GlassPoint {
  const dry = dryMixture(mixture);
  const waterMassFraction = mixture.waterG / (mixture.waterG + dry.massG);
  return {
    dry,
    waterMassFraction,
    glassTransitionC: gordonTaylorC(dry.glassTransitionC, dry.k, waterMassFraction),
    plusMinusK: glassBandK(dry, waterMassFraction),
  };
}

/** Gordon–Taylor: what a share of water makes of a dry glass transition, °C. */
export function gordonTaylorC(dryC: number, k: number, waterMassFraction: number): number {
  const pull = k * waterMassFraction;
  const solids = 1 - waterMassFraction;
  return (solids * dryC + pull * GLASS_CONSTANTS.waterGlassC.value) / (solids + pull);
}

/**
 * The glass transition of the dry part alone: what the recipe allows if every drop of water left.
 *
 * @equation 1/Tg = Σ xᵢ/Tgᵢ, kelvin
 * @param mixture - What the sweet is made of; its water is ignored.
 * @returns `glassTransitionC` and `band`, °C.
 * @throws {@link ModelRangeError} if nothing in the mixture has a known glass transition.
 * @example
 * dryGlassTransition(solutionOf('sucrose', { drySolidsMassFraction: 0.97 })).glassTransitionC // 62 °C
 * @source mouritsen-styrbaek-2017, roos-1993, syrup-glass-fit
 */
export function dryGlassTransition(mixture: Mixture): Checked<GlassTransition> {
  const dry = dryMixture(mixture);
  return {
    glassTransitionC: dry.glassTransitionC,
    band: around(dry.glassTransitionC, glassBandK(dry, 0)),
    warnings: dry.warnings,
  };
}

/**
 * Half-width of the band. One sugar: 4 K. Mixing adds 1 K, in full once a second substance makes a
 * tenth; water in a mixture adds 3 K, in full from one part in a hundred. Never less than the mean
 * of what is known of the parts: maltodextrin and hydrogenated syrups are known badly.
 */
function glassBandK({ mixed, ownBandK }: DryMixture, waterMassFraction: number): number {
  const { oneSugarK, mixingK, waterInMixtureK, fullyWetMassFraction } = GLASS_BAND_CONSTANTS;
  const wet = Math.min(1, waterMassFraction / fullyWetMassFraction.value);
  const byKindK = oneSugarK.value + mixed * (mixingK.value + wet * waterInMixtureK.value);
  return Math.max(byKindK, ownBandK);
}
