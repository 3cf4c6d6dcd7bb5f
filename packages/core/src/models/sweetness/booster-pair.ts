import type { Checked, None } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { intenseDose } from './booster-intense.js';
import { doseBands, solidOf, sweetnessOf, usualConcentration } from './booster-question.js';
import {
  bandInFinished,
  checkBooster,
  heatLimitC,
  inFinished,
  intenseFacts,
  restOf,
  withMore,
} from './booster-rest.js';
import type { Booster, BoosterOptions, BoosterPair, NoBooster } from './booster-types.js';
import { SYNERGY_MOST, SYNERGY_PAIRS } from './intense-parameters.js';
import { relativeSweetness } from './relative-sweetness.js';

/**
 * How much acesulfame-K and aspartame together make a sweet as sweet as wanted.
 *
 * Half of the sweetness from each: less of both than of either alone, as each curve is steeper where
 * it begins. Whether they raise each other beyond that is disputed, so it is up to the caller.
 * Aspartame is unsafe with phenylketonuria and does not stand a mass above 120 °C.
 *
 * @equation x·T = x·(1 − f)·S + σ·(R₁ + R₂), R₁ = R₂
 * @param mixture - The sweet without either of them.
 * @param options - As for `boosterForSweetness`, without `sweetener`; `synergy`, σ, 1 to 1.35, 1
 *   where left out.
 * @returns `acesulfameK` and `aspartame`, each as `boosterForSweetness` gives it; `none` as there,
 *   and with `already-in-it` where the mixture holds one of them.
 * @throws {@link ModelRangeError} if a number lies outside its range or nothing is dry.
 * @example
 * boosterPairForSweetness(solutionOf('isomalt', { drySolidsMassFraction: 1 }), {
 *   targetRelativeSweetness: 1,
 * }) // { acesulfameK: { massFraction: 0.001295 }, aspartame: { massFraction: 0.00104 } }
 * @source dubois-1991, recalled-sweetness, eu-sweetener-caps
 */
export function boosterPairForSweetness(
  mixture: Mixture,
  { synergy = 1, ...options }: BoosterOptions & { readonly synergy?: number | undefined },
): Checked<BoosterPair> | NoBooster | None<'already-in-it'> {
  checkBooster(options);
  requireWithin('synergy', synergy, [1, SYNERGY_MOST.acesulfameKWithAspartame.value]);
  const { targetRelativeSweetness: target, addedAtC, ...tasting } = options;
  const sweeteners = SYNERGY_PAIRS.acesulfameKWithAspartame;
  const rest = restOf(mixture, sweeteners);
  const isThere = sweeteners.some((one) => rest.takenOutG(one) > 0);
  if (isThere) return { kind: 'none', reason: 'already-in-it' };
  const now = relativeSweetness(mixture, tasting).relativeSweetness;
  if (now >= target) return { kind: 'none', reason: 'already-as-sweet' };
  const limits = sweeteners.map((one) => heatLimitC(one) ?? Infinity);
  if (addedAtC !== undefined && addedAtC > Math.min(...limits)) {
    return { kind: 'none', reason: 'too-hot' };
  }
  const question = {
    sweeteners,
    target,
    rest: sweetnessOf(rest, tasting)[0],
    concentrationGPer100Ml: usualConcentration(tasting),
    sigma: synergy,
  };
  const shares = intenseDose(question);
  if (shares === undefined) return { kind: 'none', reason: 'ceiling' };
  const doses = inFinished(rest, shares);
  const bands = doseBands(question, rest, tasting);
  const boosterOf = (at: 0 | 1): Booster => {
    const { massG, massFraction } = doses[at] ?? { massG: 0, massFraction: 0 };
    const band = bandInFinished(rest, bands[at] ?? [0, 1]);
    return { massFraction, massG, band, ...intenseFacts(sweeteners[at], massFraction) };
  };
  const [acesulfameK, aspartame] = [boosterOf(0), boosterOf(1)];
  const boosted = withMore(mixture, [
    [solidOf(sweeteners[0]), acesulfameK.massG],
    [solidOf(sweeteners[1]), aspartame.massG],
  ]);
  return { acesulfameK, aspartame, warnings: relativeSweetness(boosted, tasting).warnings };
}
