import type { PlanDocument } from '../../job/plan/types.js';
import type { DisplayOptions } from '../types.js';
import { formatNumber, roundTo } from '../units/number.js';
import { formatReading, formatTemperature, inUnit } from '../units/temperature.js';

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

/** `141 and 144`, on the scale of the reader, rounded inwards. */
export function windowText(plan: PlanDocument, options: DisplayOptions): string {
  const { windowReadingC, exactWindowReadingC } = plan.target;
  if (options.units !== 'us') {
    return windowReadingC
      .map((end) => formatReading(end, stopDecimals(plan), options))
      .join(' and ');
  }
  const [low, high] = exactWindowReadingC;
  const decimals = stopDecimals(plan);
  const step = 10 ** decimals;
  const inwards = [
    Math.ceil(roundTo(inUnit(low, options) * step, 6)) / step,
    Math.floor(roundTo(inUnit(high, options) * step, 6)) / step,
  ];
  return inwards.map((end) => formatNumber(end, decimals, options)).join(' and ');
}
