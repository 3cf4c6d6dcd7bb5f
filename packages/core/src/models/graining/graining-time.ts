import { isNone } from '../../foundation/results/is-none.js';
import type { Checked, None, Span } from '../../foundation/results/types.js';
import { joinWarnings } from '../../foundation/results/warnings.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { glassTransition } from '../glass/index.js';
import { FORMING_DOMAIN_C, GRAINING_CONSTANTS, GRAINING_DOMAIN_C } from './graining-constants.js';
import { largestRivalG } from './rivals.js';
import { SUCROSE_SOLUBILITY_DOMAIN_C } from './sucrose-solubility.js';
import { sucroseIn, sucroseSupersaturation } from './supersaturation.js';

/** When it grains, from minutes in the pan to years in the jar. */
export type GrainingTime = {
  readonly days: number;
  /** The same in decades, which is how it is known. */
  readonly log10Days: number;
  /** A decade either way, days. */
  readonly band: Span;
  /** How far above its glass transition it is, K; negative in the glass. */
  readonly aboveGlassK: number;
  /** Solids other than sucrose, per cent of all solids. */
  readonly doctorPercent: number;
  /** Whether it grows as fast as it can: warmer makes no difference. */
  readonly atTheCap: boolean;
};

/** Why there is no time to graining. */
export type NoGraining = None<'no-sucrose' | 'no-kinetic-data' | 'not-supersaturated'>;

/**
 * How long a sugar sweet stands before it grains: to a factor of ten either way.
 *
 * Show it as a word (`grainingScore`), never as a date. Ask twice for a sweet: its inside with its
 * own water at the store, and, where it lies open, its skin with the water the air of the room
 * gives it. Only sucrose grains here: of a mass that is more sugar alcohol than sucrose nothing is
 * known. Below the glass transition nothing grows; the slope there is assumed, and so is what seeds
 * do.
 *
 * @equation log₁₀ t = 3.04 − s + 0.042·D − (seeded: 1); s = min(5, 0.7·17.44·ΔT/(51.6 + ΔT)) above
 *   the glass transition, 0.1·ΔT below; D = per cent of the solids that are not sucrose
 * @param mixture - What grains, with its water: the whole sweet, or its damp skin.
 * @param options - `temperatureC`, °C, −60 to 100; `seeded`: crystals are in it already.
 * @returns `days`, `log10Days`, `band` in days, `aboveGlassK`, `doctorPercent`, `atTheCap`; `none`
 *   with `no-sucrose`, with `no-kinetic-data` where a sugar alcohol or another sugar outweighs the
 *   sucrose, with `not-supersaturated` where its water holds all of it.
 * @throws {@link ModelRangeError} if the temperature lies outside −60 to 100.
 * @example
 * grainingTime(
 *   mixture([
 *     { ingredient: 'sucrose', massG: 57 },
 *     { ingredient: 'dried-glucose-syrup', massG: 38, drySolidsMassFraction: 1 },
 *     { ingredient: 'water', massG: 5 },
 *   ]),
 *   { temperatureC: 25 },
 * ) // { log10Days: 4.82, aboveGlassK: -0.957 }
 * @source graining-time-fit, thin-film-2015, williams-1955, labuza-2004
 */
export function grainingTime(
  mixture: Mixture,
  {
    temperatureC,
    seeded = false,
  }: { readonly temperatureC: number; readonly seeded?: boolean | undefined },
): Checked<GrainingTime> | NoGraining {
  requireWithin('temperatureC', temperatureC, GRAINING_DOMAIN_C);
  return timeBetween(mixture, [temperatureC, temperatureC], seeded);
}

/**
 * How long a hot mass can be worked before it grains: to a factor of ten either way.
 *
 * The worst of the way from pan to glass: as fast as crystals grow anywhere in the range. Well
 * above the glass transition that is a limit the model holds on to, 16 minutes for plain sugar, 1.8
 * hours with a fifth of doctor, a tenth of that with crystals on the pan side.
 *
 * @equation as `grainingTime`, with s at the hot end of the range
 * @param mixture - The mass as it is worked.
 * @param options - `formingC`: its coldest and hottest, °C, −13 to 230, the cold end not over 100;
 *   `seeded`: undissolved sugar, a dry spoon or stirring put crystals in.
 * @returns as `grainingTime`; compare `days` with minutes/1440.
 * @throws {@link ModelRangeError} if an end of the range cannot be meant.
 * @example
 * grainingTimeInProcess(solutionOf('sucrose', { drySolidsMassFraction: 0.98 }), {
 *   formingC: [60, 110],
 * }) // { days: 0.01096, atTheCap: true }
 * @source graining-time-fit, thin-film-2015, williams-1955, labuza-2004
 */
export function grainingTimeInProcess(
  mixture: Mixture,
  { formingC, seeded = false }: { readonly formingC: Span; readonly seeded?: boolean | undefined },
): Checked<GrainingTime> | NoGraining {
  const [coldC, hotC] = formingC;
  requireWithin('formingC', coldC, SUCROSE_SOLUBILITY_DOMAIN_C);
  requireWithin('formingC', hotC, [coldC, FORMING_DOMAIN_C[1]]);
  return timeBetween(mixture, formingC, seeded);
}

/** The gate is asked where the water holds least, the growth where it is fastest. */
function timeBetween(
  mixture: Mixture,
  [coldC, hotC]: Span,
  seeded: boolean,
): Checked<GrainingTime> | NoGraining {
  const sucroseG = sucroseIn(mixture);
  if (largestRivalG(mixture) > sucroseG) return { kind: 'none', reason: 'no-kinetic-data' };
  if (sucroseG === 0) return { kind: 'none', reason: 'no-sucrose' };
  // What water holds falls on cooling: more than it can hold at −13 °C is so in a freezer too.
  const gateC = Math.max(coldC, SUCROSE_SOLUBILITY_DOMAIN_C[0]);
  const driven = sucroseSupersaturation(mixture, { temperatureC: gateC });
  if (!isNone(driven) && driven.supersaturation <= 1) {
    return { kind: 'none', reason: 'not-supersaturated' };
  }
  const glass = glassTransition(mixture);
  const aboveGlassK = hotC - glass.glassTransitionC;
  const speed = speedDecades(aboveGlassK);
  const doctorPercent = 100 * (1 - sucroseG / totalG(mixture.solids));
  const { logDaysAtGlass, decadesPerDoctorPercent, seededDecades, bandDecades, mostDecades } =
    GRAINING_CONSTANTS;
  const log10Days =
    logDaysAtGlass.value -
    speed +
    decadesPerDoctorPercent.value * doctorPercent -
    (seeded ? seededDecades.value : 0);
  return {
    days: 10 ** log10Days,
    log10Days,
    band: [10 ** (log10Days - bandDecades.value), 10 ** (log10Days + bandDecades.value)],
    aboveGlassK,
    doctorPercent,
    atTheCap: speed === mostDecades.value,
    warnings: joinWarnings(
      glass.warnings,
      warnOutside('temperatureC', coldC, SUCROSE_SOLUBILITY_DOMAIN_C),
    ),
  };
}

/** How many decades faster than at the glass transition. */
function speedDecades(aboveGlassK: number): number {
  const { growthShareOfViscosity, viscosityDecades, viscosityMidK, mostDecades } =
    GRAINING_CONSTANTS;
  if (aboveGlassK < 0) return GRAINING_CONSTANTS.decadesPerKInGlass.value * aboveGlassK;
  const viscosity = (viscosityDecades.value * aboveGlassK) / (viscosityMidK.value + aboveGlassK);
  return Math.min(mostDecades.value, growthShareOfViscosity.value * viscosity);
}
