import { isNone } from '../../foundation/results/is-none.js';
import type { Checked, None, Span } from '../../foundation/results/types.js';
import { joinWarnings } from '../../foundation/results/warnings.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { glassTransition, waterAtGlassTransition } from '../glass/index.js';
import { SORPTION_CONSTANTS, SORPTION_DOMAIN_C } from './constants.js';
import { daysFromLine, daysStepByStep, type WrapCourse } from './ingress.js';
import { type Pack, readPack } from './pack.js';
import { humidityAt, type NoSorption, sorptionOf } from './sorption.js';
import { wrapLifeBand } from './wrap-life-band.js';

/** What a wrapped sweet lies in. */
export type WrapStore = {
  /** °C. */
  readonly storeC: number;
  /** Of the air around the pack, 0 to 1. */
  readonly relativeHumidity: number;
};

/** What `wrapLife` answers. */
export type WrapLife = Checked<{
  /** Days until the sweet has taken up too much water, by the straight line. */
  days: number;
  /** The same, step by step along the whole isotherm. */
  daysFull: number;
  /** Of `days`: within this about nine times in ten. */
  band: Span;
  /** What the film lets through at 38 °C and 0.90, seals left out, g/(m²·day). */
  wvtrGPerM2Day: number;
  /** Air no wetter than this never gets it there, 0 to 1. */
  criticalRelativeHumidity: number;
  /** Water in the whole sweet when it turns soft, 0 to 1. */
  criticalMoistureMassFraction: number;
}>;

/** Why there are no days to tell. */
export type NoWrapLife =
  | None<'open' | 'no-estimate' | 'already-soft' | 'never-reaches'>
  | NoSorption;

/**
 * How many days a wrap keeps a sweet hard in damp air.
 *
 * Water comes through the film until the glass transition has fallen to the store. It is an estimate
 * and no date for a label: films differ by 40 %, seals let through one to three times as much, and
 * nobody else knows the place it is kept in. Test what is sold. The film is taken as it is at 38 °C; in
 * a cooler store it lets through about half, so the answer is cautious. Heat, light, grain and taste are
 * left out.
 *
 * @equation t = ln[(aw,room − aw,start)/(aw,room − aw,critical)]·b·Ws/(100·P·A·p₀),
 *   b = (m,critical − m,start)/(aw,critical − aw,start), P = WVTR/(0.9·p₀(38 °C))
 * @param mixture - The sweet as it is wrapped, with its water.
 * @param options - `pieceG` or `dryMassG`: what is in one pack, as it is or dry, g. `film` by its name,
 *   `none`, `twist`, or `wvtrGPerM2Day` of the film, 0.0001 to 10 000. `areaCm2` of the wrap.
 *   `sealFactor`: 1 to 10, how much more gets through the pack than through the film; 1 if left out, and
 *   then the band reaches to three times as much. `storeC`: °C, −40 to 60; nothing is known below 0.
 *   `relativeHumidity` of the air, 0 to 1.
 * @returns `days`, `daysFull`, the `band` of the first, and what they rest on; warnings of the glass
 *   model, and outside 15 to 35 °C. Or `none`: `open` for no wrap and for a twist, `no-estimate` where
 *   more than a tenth of the solids is sugar alcohol, `already-soft` at the store, `never-reaches` where
 *   the air is no wetter than the critical humidity, `no-sorption-data`, `nothing-dissolved`.
 * @throws {@link ModelRangeError} if a number cannot be meant, a film has no such name, or two of what
 *   excludes each other are given; and if nothing in the mixture has a known glass transition.
 * @example
 * wrapLife(solutionOf('sucrose', { drySolidsMassFraction: 0.98 }), {
 *   pieceG: 12, film: 'oriented-pp', areaCm2: 60, storeC: 25, relativeHumidity: 0.75,
 * }) // { days: 26.77… }
 * @source labuza-hyman-1998, food-packages, biscuit-wraps-1999, films-2019, moisture-band
 */
export function wrapLife(
  mixture: Mixture,
  { storeC, relativeHumidity, ...pack }: WrapStore & Pack,
): WrapLife | NoWrapLife {
  requireWithin('storeC', storeC, SORPTION_DOMAIN_C);
  requireWithin('relativeHumidity', relativeHumidity, [0, 1]);
  const wrapped = readPack(mixture, pack);
  if (wrapped === 'open') return { kind: 'none', reason: 'open' };
  const sorption = sorptionOf(mixture, storeC);
  if (isNone(sorption)) return sorption;
  if (sorption.polyolShare > SORPTION_CONSTANTS.polyolShare.value) {
    return { kind: 'none', reason: 'no-estimate' };
  }
  const critical = waterAtGlassTransition(mixture, { glassTransitionC: storeC });
  if (isNone(critical)) return critical;
  const { glassTransitionC } = glassTransition(mixture);
  if (glassTransitionC <= storeC) return { kind: 'none', reason: 'already-soft' };
  const start = mixture.waterG / sorption.dissolvedG;
  const end = critical.waterGPer100GSolids / 100;
  const criticalRelativeHumidity = humidityAt(sorption, end);
  if (relativeHumidity <= criticalRelativeHumidity) {
    return { kind: 'none', reason: 'never-reaches' };
  }
  const course: WrapCourse = {
    sorption,
    start: [humidityAt(sorption, start), start],
    end: [criticalRelativeHumidity, end],
    room: relativeHumidity,
    gPerDay: wrapped.gPerDayAt(storeC),
    solidsG: wrapped.solidsG,
  };
  const days = daysFromLine(course);
  return {
    days,
    daysFull: daysStepByStep(course),
    band: wrapLifeBand(days, { wrapped, storeC, mixture, critical }),
    wvtrGPerM2Day: wrapped.wvtr.value,
    criticalRelativeHumidity,
    criticalMoistureMassFraction: critical.moistureMassFraction,
    warnings: joinWarnings(sorption.warnings, critical.warnings),
  };
}
