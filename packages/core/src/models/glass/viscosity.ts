import { around, joinBands } from '../../foundation/results/band.js';
import type { Checked, None, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { GLASS_CONSTANTS } from './constants.js';
import { DRY_GLASS } from './dry-parameters.js';
import { glassPoint, gordonTaylorC } from './glass-transition.js';
import {
  VISCOSITY_DOMAIN_C,
  VISCOSITY_JOIN_CONSTANTS,
  VISCOSITY_TESTED_C,
  VISCOSITY_TESTED_DISSOLVED,
} from './viscosity-constants.js';
import { candyCurve, log10OfSyrup, log10OfWlf, syrupWeight } from './viscosity-curves.js';

/** What `viscosity` answers. */
export type Viscosity = Checked<{
  /** Pa·s: water 0.001, honey about 10, a mass that can be folded 1 000. */
  viscosityPaS: number;
  /** Within this about nine times in ten, Pa·s. */
  band: Span;
}>;

/**
 * How thick a syrup or a candy mass runs.
 *
 * Up to 74 parts of solids in a hundred it follows the equation for sucrose solutions; over 90 it
 * follows the glass transition alone. Between the two what is left of their difference fades out.
 * Other sugars shift the syrup by what they do to the glass transition. Crystals, bubbles, fat and
 * chewing gums are left out, and so is the skin, which is colder than the thermometer.
 *
 * Nobody could be found who measured candy mass between 110 and 150 °C: there the curve is untested
 * and says so in a warning.
 *
 * @equation log₁₀ η = 12 − 17.84·ΔT/(48.8 + ΔT) + f·D, ΔT = T − Tg; D = what the equation for sucrose
 *   solutions gives over the same curve for sucrose, at 0.74 where there is more; f = 1 up to 0.74 and
 *   0 from 0.9
 * @param mixture - What is in the pan, with its water.
 * @param options - `temperatureC`: °C, −20 to 200.
 * @returns `viscosityPaS` and its `band`, Pa·s: 15 % for sucrose solutions, half a decade more for other
 *   syrups, 0.6 decades and the error of the glass transition for candy mass; warnings outside 0.5 to
 *   0.93 dissolved and 0 to 100 °C. Or `none`, `glass`, below the glass transition.
 * @throws {@link ModelRangeError} outside the temperatures, and if nothing in the mixture has a known
 *   glass transition.
 * @example
 * const syrup = solutionOf('sucrose', { drySolidsMassFraction: 0.6 });
 * viscosity(syrup, { temperatureC: 20 }) // { viscosityPaS: 0.05973… }, a thin cream
 * @source mathlouthi-genotelle-1995, viscosity-fit, williams-1955, viscosity-band
 */
export function viscosity(
  mixture: Mixture,
  { temperatureC }: { readonly temperatureC: number },
): Viscosity | None<'glass'> {
  requireWithin('temperatureC', temperatureC, VISCOSITY_DOMAIN_C);
  const { dry, glassTransitionC, plusMinusK } = glassPoint(mixture);
  const aboveGlassK = temperatureC - glassTransitionC;
  if (aboveGlassK < 0) return { kind: 'none', reason: 'glass' };
  const dissolved = mixture.dissolvedMassFraction;
  const syrup = syrupWeight(dissolved);
  const curve = candyCurve();
  const log10 =
    log10OfWlf(aboveGlassK, curve) +
    (syrup > 0 ? syrup * overGlassCurve(dissolved, temperatureC) : 0);
  const { sucroseSyrupDecades, otherSyrupDecades, candyDecades } = VISCOSITY_JOIN_CONSTANTS;
  const decades =
    syrup * (sucroseSyrupDecades.value + otherSyrupDecades.value * (1 - shareOfSucrose(mixture))) +
    (1 - syrup) * candyDecades.value;
  const off = (glassK: number): number =>
    (1 - syrup) * (log10OfWlf(aboveGlassK + glassK, curve) - log10OfWlf(aboveGlassK, curve));
  const [low, high] = joinBands(log10, around(log10, decades), [
    log10 + off(plusMinusK),
    log10 + off(-plusMinusK),
  ]);
  return {
    viscosityPaS: 10 ** log10,
    band: [10 ** low, 10 ** high],
    warnings: [
      ...dry.warnings,
      ...warnOutside('dissolvedMassFraction', dissolved, VISCOSITY_TESTED_DISSOLVED),
      ...warnOutside('temperatureC', temperatureC, VISCOSITY_TESTED_C),
    ],
  };
}

/** Decades the syrup equation lies over the glass curve, for sucrose of this strength or 0.74. */
function overGlassCurve(dissolvedMassFraction: number, temperatureC: number): number {
  const strength = Math.min(dissolvedMassFraction, VISCOSITY_JOIN_CONSTANTS.syrupUpTo.value);
  const { sugarKPerC, sugarKAt0C } = GLASS_CONSTANTS;
  const dryC = DRY_GLASS.sucrose.value;
  const glassC = gordonTaylorC(dryC, sugarKPerC.value * dryC + sugarKAt0C.value, 1 - strength);
  return log10OfSyrup(strength, temperatureC) - log10OfWlf(temperatureC - glassC, candyCurve());
}

function shareOfSucrose({ solids }: Mixture): number {
  let sucroseG = 0;
  for (const solid of solids) {
    if (solid.kind === 'pure' && solid.species === 'sucrose') sucroseG += solid.massG;
  }
  return sucroseG / totalG(solids);
}
