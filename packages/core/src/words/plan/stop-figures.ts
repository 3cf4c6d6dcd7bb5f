import type { Advice } from '../../job/advice/types.js';
import type { PlanDocument } from '../../job/plan/types.js';
import type { DisplayOptions } from '../types.js';
import { formatNumber, roundTo } from '../units/number.js';
import { formatTemperature, inUnit, temperaturePair } from '../units/temperature.js';

/** A window narrower than this, K, is shown with tenths; whole degrees would close it. */
const NARROW_WINDOW_K = 3;

/** Digits that belong to this plan's temperatures. */
export function stopDecimals({ target: { windowReadingC } }: PlanDocument): 0 | 1 {
  const [low, high] = windowReadingC;
  return roundTo(high - low, 6) < NARROW_WINDOW_K ? 1 : 0;
}

/** `143 °C · 289 °F` */
export function stopText(plan: PlanDocument, options: DisplayOptions): string {
  return formatTemperature(plan.target.readingC.value, {
    ...options,
    decimals: stopDecimals(plan),
  });
}

/** `143 °C (289 °F)`: the stop wherever a sentence names it. */
export function stopInText(plan: PlanDocument, options: DisplayOptions): string {
  const [first, second] = temperaturePair(plan.target.readingC.value, stopDecimals(plan), options);
  return `${first} (${second})`;
}

/** The numbers of an advice that the page shows with digits of its own: the stop. */
export function shownAt(
  plan: PlanDocument,
  { numbers }: Advice,
  options: DisplayOptions,
): Readonly<Record<string, string>> {
  return numbers.readingC === plan.target.readingC.value
    ? { readingC: stopInText(plan, options) }
    : {};
}

/**
 * The ends of the window on the scale of the reader, rounded inwards on that scale, but never past
 * the stop as it is shown.
 */
export function windowEnds(
  plan: PlanDocument,
  options: DisplayOptions,
): readonly [low: string, high: string] {
  const { windowReadingC, exactWindowReadingC, readingC } = plan.target;
  const decimals = stopDecimals(plan);
  const step = 10 ** decimals;
  // In degrees Celsius the plan has rounded inwards already.
  const [low, high] = options.units === 'us' ? exactWindowReadingC : windowReadingC;
  const scaled = (valueC: number): number => roundTo(inUnit(valueC, options) * step, 6);
  const stop = roundTo(inUnit(readingC.value, options), decimals);
  return [
    formatNumber(Math.min(Math.ceil(scaled(low)) / step, stop), decimals, options),
    formatNumber(Math.max(Math.floor(scaled(high)) / step, stop), decimals, options),
  ];
}

/** `141 and 144` */
export function windowText(plan: PlanDocument, options: DisplayOptions): string {
  return windowEnds(plan, options).join(' and ');
}
