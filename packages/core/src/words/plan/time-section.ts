import type { PlanDocument } from '../../job/plan/types.js';
import { COOK_MOMENTS } from '../names/cook-words.js';
import { spelled } from '../text/region.js';
import type { DisplayOptions } from '../types.js';
import { formatByKey } from '../units/by-key.js';
import { formatNumber } from '../units/number.js';
import { flameWords } from './flame-words.js';
import { trustIn } from './trust.js';

/** A degree is within every thermometer. */
const WORTH_SAYING_K = 1;

/** The boil against the clock, the flame, and the moments of the hand. */
export function timeLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { cooking } = plan;
  const lines =
    cooking === undefined
      ? ['This hob never gets there: see what to change.']
      : [stopLine(plan, cooking, options), climbLine(plan, cooking, options)].concat(
          'Minutes from the cold pan, and what your thermometer shows then:',
          cooking.moments.map(
            ({ id, atMin, readingC }) =>
              `  ${formatNumber(atMin.value, 0, options).padStart(3)} min  ${COOK_MOMENTS[id]}, ${formatByKey('readingC', readingC, options)}`,
          ),
        );
  return lines.map((line) => spelled(line, options));
}

type Cooking = NonNullable<PlanDocument['cooking']>;

function stopLine(
  plan: PlanDocument,
  { hobIsAssumed, toStopMin }: Cooking,
  options: DisplayOptions,
): string {
  const minutes = (value: number) => formatNumber(value, 0, options);
  const where = hobIsAssumed
    ? 'Nobody said which hob. On one like most the stop comes'
    : 'On your hob the stop comes';
  return `${where} about ${formatByKey('atMin', toStopMin.value, options)} after the cold pan goes on${trustIn(plan, toStopMin, minutes)}.`;
}

function climbLine(
  { advice }: PlanDocument,
  { rateAtStopKPerMin, turnDownToFraction, lagK }: Cooking,
  options: DisplayOptions,
): string {
  const climb = formatByKey('rateKPerMin', rateAtStopKPerMin.value, options);
  const caught =
    turnDownToFraction < 1
      ? `; turned down to ${flameWords(turnDownToFraction)} you can catch it`
      : ', slowly enough to catch';
  // What the step says of the slower end, and the advice of a slow thermometer, is not said again.
  const behind =
    lagK === undefined ||
    lagK.value < WORTH_SAYING_K ||
    turnDownToFraction >= 1 ||
    advice.some(({ code }) => code === 'reading-lags')
      ? ''
      : ` At full heat your thermometer would be about ${formatByKey('lagK', lagK.value, options)} behind.`;
  return `There it climbs about ${climb} at full heat${caught}.${behind}`;
}
