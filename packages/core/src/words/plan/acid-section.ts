import type { PlanDocument } from '../../job/plan/types.js';
import { fill } from '../text/fill.js';
import type { DisplayOptions } from '../types.js';
import { formatFraction, formatMass } from '../units/amounts.js';
import { formatByKey } from '../units/by-key.js';
import { formatNumber } from '../units/number.js';
import { trustIn } from './trust.js';

/** What is not worth a sentence: less than this nobody tastes or feels. */
const WORTH_SAYING = { fraction: 0.0005, K: 0.5, times: 2 } as const;

/** What acid and heat do to the sugar, early and late. */
export function acidLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { inversion } = plan;
  if (inversion === undefined) return [];
  const { earlyFraction, earlyCostsK, pH, sournessMassFraction: sour } = inversion;
  const share = (value: number) => formatFraction(value, options);
  const told = plan.advice.some(({ code }) => code === 'acid-too-early');
  return [
    `In the boil, at pH ${formatNumber(pH.value, 1, options)} (lower is sourer), about ${share(earlyFraction.value)} of the sucrose splits into glucose and fructose, called invert sugar${trustIn(plan, earlyFraction, share)}.`,
    // Where it is bad enough for an advice, the advice has said so.
    ...(earlyCostsK >= WORTH_SAYING.K && !told
      ? [
          `With acid in the boil it softens ${formatByKey('costsK', earlyCostsK, options)} lower than without.`,
        ]
      : []),
    ...lateLines(plan, inversion, options),
    ...(sour === undefined ? [] : [`It tastes as sour as ${share(sour.value)} of citric acid.`]),
  ];
}

/** The estimate is worth no more than its band, so no middle is told, and the salt that helps is told as a ratio. */
function lateLines(
  plan: PlanDocument,
  inversion: NonNullable<PlanDocument['inversion']>,
  options: DisplayOptions,
): readonly string[] {
  const { lateFraction, lateCostsK, limitedByWater, buffer } = inversion;
  if (lateFraction.value < WORTH_SAYING.fraction) return [];
  const share = (value: number) => formatFraction(value, options);
  const costs =
    lateCostsK < WORTH_SAYING.K
      ? 'That costs nothing you would feel.'
      : 'That costs nothing now; once the {sweet} takes back the water it used, it softens about {costsK} lower.';
  const times = lateFraction.value / (buffer?.lateFraction || Number.POSITIVE_INFINITY);
  const tens = times < 10 ? 1 : 10;
  return [
    `From the acid to the set ${fill('{sweet}', {}, options)?.toLowerCase()} more of it splits${trustIn(plan, lateFraction, share)}${limitedByWater ? ', until no water is left for it' : ''}: rough, because so little water is left. ${fill(costs, { numbers: { costsK: lateCostsK } }, options)}`,
    ...(buffer === undefined || times < WORTH_SAYING.times
      ? []
      : [
          `${formatMass(buffer.sodiumCitrateG, options)} of sodium citrate, a salt that tames acid, would make that about ${formatNumber(Math.round(times / tens) * tens, 0, options)} times less and the taste a little less sharp.`,
        ]),
  ];
}
