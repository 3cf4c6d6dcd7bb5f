import { joinBands } from '../../foundation/results/band.js';
import type { Checked, Span } from '../../foundation/results/types.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { type Contribution, contributionsOf, withSynergy } from './contributions.js';
import { checkSynergy, checkTasting, type Synergy, type TastingOptions } from './tasting.js';

/** How sweet beside sugar. */
export type RelativeSweetness = {
  readonly relativeSweetness: number;
  /** Every lowest and every highest value in print at once: bounds. */
  readonly band: Span;
  /** Where it probably lies: the same, as if one were wrong without the others. */
  readonly likely: Span;
  /** What intense sweeteners have a part in it. */
  readonly fromIntense: number;
};

/**
 * How sweet the dry part of a sweet is, weight for weight beside sugar.
 *
 * Sweetness of sugars and sugar alcohols is taken to add up by mass. It is the judgement of a panel
 * and shifts with strength, warmth and company: print two figures, and expect a fifth either way.
 * Glucose syrup is the least agreed on. Intense sweeteners level off with their dose in the mouth;
 * the numbers behind them are recalled, and a warning names each. What has no value is left out
 * with a warning. Acid counts in the mass and has no sweetness of its own, though it makes a sweet
 * taste less sweet. No two raise each other unless asked: most of what is called synergy is the
 * bend of each curve, which is in here already.
 *
 * @equation S = Σ wᵢ·sᵢ + Σ Rⱼ/x over the dry solids; syrup solids s = 0.01335·DE − 0.0000595·DE²;
 *   fructose at T: s = 1.5632·exp(−0.011223·T); glucose at R: s = 1 − 0.4206·exp(−0.07481·R);
 *   intense R = Rm·C/(k + C), C = 10 000·x·w mg/L
 * @param mixture - What the sweet is made of; its water is ignored.
 * @param options - `tastingTemperatureC`, 0 to 100 °C: fructose then follows its own curve, 1.03
 *   in the mouth and 1.25 in a cool drink; without it fructose is 1.20. `sucroseEquivalencePercent`,
 *   0 to 60: glucose then follows its own curve, 0.80 where it is as sweet as sugar at 10 %, 0.95
 *   at 30. `tastingConcentrationGPer100Ml`, x, 10 where left out. `synergy`, opt-in.
 * @returns `relativeSweetness`, sucrose = 1; `band`, the sums of all lowest and of all highest
 *   values in print: bounds, not likely errors; `likely`, their root-sum-square; `fromIntense`.
 * @throws {@link ModelRangeError} if an option lies outside its range or there is nothing dry.
 * @example
 * relativeSweetness(solutionOf('isomalt', { drySolidsMassFraction: 0.98 })).relativeSweetness // 0.5
 * @source chattopadhyay-2014, syrup-sweetness-fit, sweetness-encyclopedia, tsuzuki-yamazaki-1953,
 *   glucose-strength-fit, dubois-1991, sucralose-response-fit
 */
export function relativeSweetness(
  mixture: Mixture,
  { synergy = {}, ...options }: TastingOptions & { readonly synergy?: Synergy | undefined } = {},
): Checked<RelativeSweetness> {
  const asked = checkTasting(options);
  checkSynergy(synergy);
  if (!(mixture.massG - mixture.waterG > 0)) {
    throw new ModelRangeError('Water alone has no sweetness to compare.', {
      code: 'outside-range',
      parameter: 'drySolidsMassFraction',
      received: mixture.drySolidsMassFraction,
    });
  }
  const { list, warnings } = contributionsOf(mixture, options);
  const tasted = withSynergy(list, synergy);
  const total = sumOf(tasted, 0);
  return {
    relativeSweetness: total,
    band: [sumOf(tasted, 1), sumOf(tasted, 2)],
    likely: joinBands(total, ...tasted.map((one) => aboutTotal(total, one))),
    fromIntense: sumOf(
      tasted.filter(({ isIntense }) => isIntense),
      0,
    ),
    warnings: [...asked, ...warnings],
  };
}

/** Values (0), lowest (1) or highest (2) of all parts together. */
function sumOf(list: readonly Contribution[], at: 0 | 1 | 2): number {
  return list.reduce((sum, { taste }) => sum + taste[at], 0);
}

function aboutTotal(total: number, { taste: [value, low, high] }: Contribution): Span {
  return [total + low - value, total + high - value];
}
