import type { GrainingAnswer, PlanDocument } from '../../job/plan/types.js';
import { GRAINING_WORDS, NO_GRAINING, NO_WRAP } from '../names/keeping-words.js';
import type { DisplayOptions } from '../types.js';
import { formatFraction } from '../units/amounts.js';
import { formatByKey } from '../units/by-key.js';
import { formatNumber, roundTo } from '../units/number.js';
import { formatReading } from '../units/temperature.js';
import { trustIn } from './trust.js';

/** Two ways of reckoning the days of a wrap are one where they differ by less than this. */
const SAME_DAYS = 1.25;

/** Whether it stays hard, what air it bears, whether it grains, and how long its wrap holds. */
export function keepingLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { glassTransitionC, storeC, storeRelativeHumidity, forDays } = plan.keeping;
  const degrees = (value: number) => formatByKey('glassTransitionC', value, options);
  return [
    `Stays hard up to about ${degrees(glassTransitionC.value)}, its glass point${trustIn(plan, glassTransitionC, (value) => formatReading(value, 0, options))}.`,
    `You keep it at ${formatByKey('storeC', storeC, options)}${storeRelativeHumidity === undefined ? '' : ` and ${formatFraction(storeRelativeHumidity, options)} humidity`}, for ${formatByKey('forDays', forDays, options)}.`,
    `Each half per cent of water it takes up costs about ${formatByKey('K', 5, options)} of that: close it well.`,
    // What is soft already, no air makes soft.
    ...(plan.keeping.marginK.value <= 0 ? [] : [airLine(plan, options)]),
    grainingLine(plan.graining),
    wrapLine(plan, options),
  ];
}

function airLine(plan: PlanDocument, options: DisplayOptions): string {
  const { air } = plan.keeping;
  if (air === undefined)
    return 'What air it bears nobody has measured for a mass like this: no estimate.';
  const share = (value: number) => formatFraction(value, options);
  const { criticalRelativeHumidity: critical, stickyAtRelativeHumidity: sticky } = air;
  return `Bare, it softens in air of more than about ${share(critical.value)} humidity${trustIn(plan, critical, share)}${sticky === undefined ? '' : `; from ${share(sticky)} on its skin is sticky`}.`;
}

function grainingLine(graining: PlanDocument['graining']): string {
  if (graining.kind === 'none') return NO_GRAINING[graining.reason];
  const word = ({ word: id }: GrainingAnswer) => GRAINING_WORDS[id];
  const { process, wrapped, open } = graining;
  const bare = open === undefined ? '' : `, ${word(open)} bare`;
  return `Graining (sugar crystals where it should be glass): ${word(process)} while you work it, ${word(wrapped)} in its wrap${bare}. The times behind that are good to a factor of ten.`;
}

function wrapLine(plan: PlanDocument, options: DisplayOptions): string {
  const { wrap } = plan.keeping;
  if (wrap.kind === 'none') return NO_WRAP[wrap.reason];
  const { days, fullDays } = wrap;
  // Good to a factor of three: the last digit of hundreds of days would be a lie.
  const round = (value: number) => roundTo(value, value < 100 ? 0 : -1);
  const shown = (value: number) => formatNumber(round(value), 0, options);
  const other =
    Math.abs(Math.log(fullDays / days.value)) < Math.log(SAME_DAYS)
      ? ''
      : `; reckoned in small steps it is ${shown(fullDays)}`;
  return `Wrapped as you say it stays hard for about ${formatByKey('forDays', round(days.value), options)}${trustIn(plan, days, shown)}${other}.`;
}
