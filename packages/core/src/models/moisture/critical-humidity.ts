import { joinBands } from '../../foundation/results/band.js';
import { isNone } from '../../foundation/results/is-none.js';
import type { Checked, None, Span } from '../../foundation/results/types.js';
import { joinWarnings } from '../../foundation/results/warnings.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { waterAtGlassTransition } from '../glass/index.js';
import { SORPTION_DOMAIN_C, STICKY_CONSTANTS } from './constants.js';
import { humidityBand } from './equilibrium-relative-humidity.js';
import { humidityAt, type NoSorption, sorptionOf } from './sorption.js';

/** A humidity with the water the sweet then holds. */
export type Dampness = {
  /** 0 to 1. */
  readonly relativeHumidity: number;
  /** Water in the whole sweet, 0 to 1. */
  readonly moistureMassFraction: number;
};

/** What `criticalHumidity` answers. */
export type CriticalHumidity = Checked<
  Dampness & {
    /** Of `relativeHumidity`: within this about nine times in ten. */
    band: Span;
    /** Its surface begins to stick. */
    sticksFrom: Dampness;
    /** It is sticky all over. */
    stickyAt: Dampness;
  }
>;

/**
 * The dampest air a bare sweet stays hard in.
 *
 * Wetter air gives it water until its glass transition has come down to the store; compare the room
 * with this, never with the humidity of the sweet itself. The surface begins to stick once the glass
 * transition lies 10 K under the store, and is sticky at 20 K.
 *
 * @equation aw at Tg = store, at store − 10 K and at store − 20 K
 * @param mixture - The sweet, with any amount of water.
 * @param options - `storeC`: °C, −40 to 60; nothing is known below 0.
 * @returns `relativeHumidity`, 0 to 1, with its `band`, `moistureMassFraction`, and the same two for
 *   `sticksFrom` and `stickyAt`; a warning outside 15 to 35 °C, and those of the glass model. Or `none`:
 *   `already-soft` where even the dry recipe is soft at the store, `no-sorption-data`,
 *   `nothing-dissolved`.
 * @throws {@link ModelRangeError} outside the temperatures, and if nothing in the mixture has a known
 *   glass transition.
 * @example
 * const sweet = solutionOf('sucrose', { drySolidsMassFraction: 0.98 });
 * criticalHumidity(sweet, { storeC: 25 }) // { relativeHumidity: 0.2426… }
 * @source roos-1993, sorption-fit, downton-1982
 */
export function criticalHumidity(
  mixture: Mixture,
  { storeC }: { readonly storeC: number },
): CriticalHumidity | None<'already-soft'> | NoSorption {
  requireWithin('storeC', storeC, SORPTION_DOMAIN_C);
  const sorption = sorptionOf(mixture, storeC);
  if (isNone(sorption)) return sorption;
  const critical = waterAtGlassTransition(mixture, { glassTransitionC: storeC });
  if (isNone(critical)) return critical;
  const at = ({ moistureMassFraction, waterGPer100GSolids }: typeof critical): Dampness => ({
    relativeHumidity: humidityAt(sorption, waterGPer100GSolids / 100),
    moistureMassFraction,
  });
  const below = (underK: number): Dampness => {
    const softer = waterAtGlassTransition(mixture, { glassTransitionC: storeC - underK });
    // What is hard at the store is harder where it is colder.
    return at(isNone(softer) ? critical : softer);
  };
  const here = at(critical);
  const perMoisture =
    critical.waterGPer100GSolids / 100 / waterPerDry(critical.moistureMassFraction);
  const [driest, wettest] = critical.band;
  return {
    ...here,
    band: joinBands(
      here.relativeHumidity,
      humidityBand(sorption, critical.waterGPer100GSolids / 100),
      [
        humidityAt(sorption, perMoisture * waterPerDry(driest)),
        humidityAt(sorption, perMoisture * waterPerDry(wettest)),
      ],
    ),
    sticksFrom: below(STICKY_CONSTANTS.startsK.value),
    stickyAt: below(STICKY_CONSTANTS.stickyK.value),
    warnings: joinWarnings(sorption.warnings, critical.warnings),
  };
}

function waterPerDry(moistureMassFraction: number): number {
  return moistureMassFraction / (1 - moistureMassFraction);
}
