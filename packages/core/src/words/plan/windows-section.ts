import type { PlanDocument } from '../../job/plan/types.js';
import { WINDOW_WORDS } from '../names/cook-words.js';
import { capitalised } from '../text/fill.js';
import { spelled } from '../text/region.js';
import type { DisplayOptions } from '../types.js';
import { formatByKey } from '../units/by-key.js';
import { countInWords, formatNumber } from '../units/number.js';
import { trustIn } from './trust.js';

/** What can be done to the mass at which temperature, and for how long it pours. */
export function windowLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const shown = (value: number | undefined) =>
    value === undefined ? undefined : formatByKey('lowC', value, options);
  const windows = plan.windows.map(({ id, lowC, highC }) => {
    const [low, high] = [shown(lowC), shown(highC)];
    const between =
      low === undefined
        ? `at ${high} or below`
        : `from ${high === undefined ? `${low} up` : `${high} down to ${low}`}`;
    return capitalised(`${WINDOW_WORDS[id]} ${between}.`);
  });
  return [...windows, ...potLines(plan, options)].map((line) => spelled(line, options));
}

function potLines(plan: PlanDocument, options: DisplayOptions): readonly string[] {
  const { potLifeMin, poursInTime } = plan.pour;
  if (potLifeMin === undefined) return [];
  const trust = trustIn(plan, potLifeMin, (value) => formatNumber(value, 0, options));
  const times =
    ['once', 'once', 'twice'][poursInTime ?? 0] ??
    `${countInWords(poursInTime ?? 0, options)} times`;
  const enough =
    poursInTime === undefined
      ? ''
      : `, ${poursInTime === 0 ? 'not ' : ''}enough to fill the mould ${times}`;
  return [
    `In this pan it pours for about ${formatByKey('potLifeMin', potLifeMin.value, options)}${trust}${enough}.`,
  ];
}
