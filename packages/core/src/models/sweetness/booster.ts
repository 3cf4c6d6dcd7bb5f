import type { Checked, Span } from '../../foundation/results/types.js';
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
import type { Booster, BoosterOptions, BoosterSweetener, NoBooster } from './booster-types.js';
import { pureTaste } from './bulk-taste.js';
import type { IntenseSweetener } from './intense-parameters.js';
import { isIntense } from './intense-response.js';
import { relativeSweetness } from './relative-sweetness.js';
import type { TastingOptions } from './tasting.js';

/**
 * How much of a sweetener makes a sweet as sweet as wanted.
 *
 * Start at half and taste: the doses of intense sweeteners are recalled, each right within its
 * factor, and isomalt gains by itself when it is concentrated. A cap is what a law is recalled to
 * allow; local rules decide. Sucralose and aspartame do not stand a mass above 120 °C. A bulk
 * sweetener no sweeter than the target never gets there: xylitol cannot bring isomalt to sugar.
 * Xylitol is deadly to dogs.
 *
 * @equation intense: x·T = x·(1 − f)·S + R, f = k·R/((Rm − R)·10 000·x); bulk: f = (T − S)/(P − S)
 * @param mixture - The sweet as it is; what is in it of the sweetener counts.
 * @param options - `sweetener`; `targetRelativeSweetness`, 0.01 to 3, sucrose = 1; `addedAtC`, how
 *   hot the mass is then; and how it is tasted, as for `relativeSweetness`. Without
 *   `tastingConcentrationGPer100Ml` it is 10, and the band reaches down to 5.
 * @returns `massFraction` of the finished sweet, `massG` to add, `band`, and for intense sweeteners
 *   `rightWithin`, `legalCapMassFraction` with `aboveLegalCap`, `heatLimitC`; `none` with
 *   `already-as-sweet`, `weaker-than-target` (bulk), `ceiling` (it levels off first), `too-hot`.
 * @throws {@link ModelRangeError} if a number lies outside its range or nothing is dry.
 * @example
 * boosterForSweetness(solutionOf('isomalt', { drySolidsMassFraction: 1 }), {
 *   sweetener: 'sucralose',
 *   targetRelativeSweetness: 1,
 * }) // { massFraction: 0.0007976, aboveLegalCap: false, heatLimitC: 120 }
 * @source dubois-1991, sucralose-response-fit, chattopadhyay-2014, eu-sweetener-caps, bfr-2019
 */
export function boosterForSweetness(
  mixture: Mixture,
  { sweetener, ...options }: BoosterOptions & { readonly sweetener: BoosterSweetener },
): Checked<Booster> | NoBooster {
  checkBooster(options);
  const { targetRelativeSweetness: target, addedAtC, ...tasting } = options;
  const now = relativeSweetness(mixture, tasting);
  if (now.relativeSweetness >= target) return { kind: 'none', reason: 'already-as-sweet' };
  const found = isIntense(sweetener)
    ? intense(mixture, sweetener, { target, addedAtC, tasting })
    : bulk(mixture, sweetener, { target, tasting, ...now });
  if ('kind' in found) return found;
  const boosted = withMore(mixture, [[solidOf(sweetener), found.massG]]);
  return { ...found, warnings: relativeSweetness(boosted, tasting).warnings };
}

type Asked = {
  readonly target: number;
  readonly addedAtC?: number | undefined;
  readonly tasting: TastingOptions;
};

function intense(
  mixture: Mixture,
  sweetener: IntenseSweetener,
  { target, addedAtC, tasting }: Asked,
): Booster | NoBooster {
  const hottestC = heatLimitC(sweetener);
  if (addedAtC !== undefined && hottestC !== undefined && addedAtC > hottestC) {
    return { kind: 'none', reason: 'too-hot' };
  }
  const rest = restOf(mixture, [sweetener]);
  const question = {
    sweeteners: [sweetener],
    target,
    rest: sweetnessOf(rest, tasting)[0],
    concentrationGPer100Ml: usualConcentration(tasting),
    sigma: 1,
  };
  const shares = intenseDose(question);
  const dose = shares === undefined ? undefined : inFinished(rest, shares)[0];
  if (dose === undefined || rest.dryG <= 0) return { kind: 'none', reason: 'ceiling' };
  const [band = [0, 1]] = doseBands(question, rest, tasting);
  return {
    massFraction: dose.massFraction,
    massG: dose.massG - rest.takenOutG(sweetener),
    band: bandInFinished(rest, band),
    ...intenseFacts(sweetener, dose.massFraction),
  };
}

function bulk(
  mixture: Mixture,
  sweetener: Exclude<BoosterSweetener, IntenseSweetener>,
  {
    target,
    tasting,
    relativeSweetness: middle,
    band: [low, high],
  }: Asked & { readonly relativeSweetness: number; readonly band: Span },
): Booster | NoBooster {
  const [potency, weakest, strongest] = pureTaste(sweetener, tasting) ?? [0, 0, 0];
  if (potency <= target) return { kind: 'none', reason: 'weaker-than-target' };
  const rest = restOf(mixture, []);
  const share = (of: number, by: number) => (by <= target ? 1 : (target - of) / (by - of));
  const added = inFinished(rest, [share(middle, potency)])[0] ?? { massG: 0 };
  const thereG = restOf(mixture, [sweetener]).takenOutG(sweetener);
  const total = (massG: number) => (thereG + massG) / (mixture.massG + massG);
  const end = (fraction: number) =>
    fraction >= 1 ? 1 : total((rest.dryG * Math.max(0, fraction)) / (1 - Math.max(0, fraction)));
  return {
    massFraction: total(added.massG),
    massG: added.massG,
    band: [end(share(high, strongest)), end(share(low, weakest))],
    lingersAlone: false,
  };
}
