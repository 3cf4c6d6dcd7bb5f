import type { Checked, None, Span } from '../../foundation/results/types.js';
import { warnOutside } from '../../foundation/validity/check.js';
import { syrupsOwnPH } from '../../matter/acids/acidity.js';
import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture } from '../../matter/mixture/types.js';
import {
  INVERSION_CONSTANTS,
  INVERSION_TESTED_C,
  INVERSION_TESTED_DISSOLVED,
} from './constants.js';
import type { Law } from './dry-end.js';
import { sucroseIn, withInvert } from './inverted-mixture.js';
import { type Heating, waterPath } from './path.js';
import { type PanState, runLaw } from './run-law.js';
import { type AcidOptions, stretchesOf, withAcids } from './stretches.js';

/** How long the mass is hot, and what acid is in it. */
export type InversionOptions = Heating &
  AcidOptions & {
    /** pH without the cook's acid; 5.0 by default, between 4.5 and 5.5. */
    readonly syrupPH?: number | undefined;
  };

/** What acid and heat did to the sugar. */
export type Inversion = {
  /** Of the sucrose there was, 0–1. */
  readonly invertedFraction: number;
  readonly band: Span;
  readonly invertedG: number;
  readonly waterConsumedG: number;
  /** The water ran out first: more heat inverts nothing more. */
  readonly limitedByWater: boolean;
  /** What is in the pan afterwards, late acid included. */
  readonly mixture: Mixture;
};

/** Water counts as run out where a hundredth of it is left. */
const RUN_OUT = 0.01;

/**
 * How much of the sugar acid and heat split into glucose and fructose.
 *
 * Sucrose and water are stepped together, the pH solved again in the water of each step: each gram
 * split eats 0.05263 g of water, and in a cooked mass that water is the limit. While water boils
 * away inversion takes its share of the steam; once it does not, it eats what is there. The middle
 * slows the printed law where the mass is over 85 per cent dry, by a guess; the high end is the law
 * as printed; the low end a third of the middle there. An estimate on both sides: nothing should
 * rest on it alone. Acid is taken as dissolved at once, which grains of acid are not, and the
 * temperature as no higher than the boil.
 *
 * @equation dS = −k·S dt, dW = 0.05263·dS − steam, k by `inversionRate`, times
 *   10^(−(w − 0.85)/0.13) over w = 0.85
 * @param of - The mass at the start; acids in it count from the start.
 * @param options - `path` of `timeS`, `temperatureC` and `drySolidsMassFraction` of the recipe, in
 *   order, up to a day; or `temperatureC` 0 to 200 held for `minutes`. `acids` join at
 *   `acidsFromS`. `alkalinityMmolPerL` 0 to 50 of `tapWaterG`; `syrupPH` 2 to 9.
 * @returns `invertedFraction` with its `band`, `invertedG`, `waterConsumedG`, `limitedByWater` and
 *   the `mixture` after; warnings over 105 °C and over 85 per cent dissolved; `none` without
 *   sucrose.
 * @throws {@link ModelRangeError} outside the domains, for a path that is empty or runs back, or an
 *   acid nothing is known of.
 * @example
 * const kneaded = inversion(solutionOf('sucrose', { drySolidsMassFraction: 0.975 }), {
 *   temperatureC: 120,
 *   minutes: 2,
 *   acids: { 'citric-acid': 1 },
 * });
 * isNone(kneaded) ? kneaded.reason : kneaded.invertedFraction // 0.0856, between 0.031 and 0.434
 * @source vukov-1965, dry-end-guess, bates-pinching-1949, acid-constant-tables
 */
export function inversion(
  of: Mixture,
  options: InversionOptions,
): Checked<Inversion> | None<'no-sucrose'> {
  const own = syrupsOwnPH(options.syrupPH);
  const path = waterPath(of, options);
  const [first] = path;
  const last = path[path.length - 1] ?? first;
  const sucroseG = sucroseIn(of);
  if (sucroseG === 0) return { kind: 'none', reason: 'no-sucrose' };
  const stretches = stretchesOf(of, path, options);
  const dissolvedG = totalG(of.solids);
  const run = (law: Law, pH: number): PanState =>
    stretches.reduce<PanState>((state, stretch) => runLaw(law, stretch, state, pH), {
      sucroseG,
      waterG: first.waterG,
    });
  const share = (state: PanState): number => (sucroseG - state.sucroseG) / sucroseG;
  const middle = run('middle', own.pH);
  const invertedFraction = share(middle);
  const invertedG = sucroseG - middle.sucroseG;
  const driestG = path.reduce((least, { waterG }) => Math.min(least, waterG), first.waterG);
  const hottestC = path.reduce((most, { temperatureC }) => Math.max(most, temperatureC), 0);
  return {
    invertedFraction,
    band: [
      Math.min(invertedFraction, share(run('low', own.band[1]))),
      Math.max(invertedFraction, share(run('upper', own.band[0]))),
    ],
    invertedG,
    waterConsumedG: invertedG * INVERSION_CONSTANTS.waterPerSucrose.value,
    limitedByWater: middle.sucroseG > 0 && middle.waterG <= RUN_OUT * last.waterG,
    mixture: withInvert(withAcids(of, options.acids), invertedG, middle.waterG),
    warnings: [
      ...warnOutside('temperatureC', hottestC, INVERSION_TESTED_C),
      ...warnOutside(
        'dissolvedMassFraction',
        dissolvedG / (dissolvedG + driestG),
        INVERSION_TESTED_DISSOLVED,
      ),
    ],
  };
}
