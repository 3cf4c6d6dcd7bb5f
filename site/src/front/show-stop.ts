import type { StopHere } from './stop-here.js';

/** The stop and its window as people read them, in whole degrees of one scale. */
export type ShownStop = {
  readonly stop: string;
  readonly low: string;
  readonly high: string;
};

/** Whole degrees; the window inwards, so that no reading it names is a bad one. */
export function showStop({ stopC, windowC }: StopHere, fahrenheit: boolean): ShownStop {
  const own = (temperatureC: number): number =>
    fahrenheit ? temperatureC * 1.8 + 32 : temperatureC;
  const stop = Math.round(own(stopC));
  const low = Math.ceil(own(windowC[0]) - 1e-9);
  const high = Math.floor(own(windowC[1]) + 1e-9);
  const room = low < high && low <= stop && stop <= high;
  const digits = room ? 0 : 1;
  return {
    stop: own(stopC).toFixed(digits),
    low: room ? String(low) : (Math.ceil(own(windowC[0]) * 10 - 1e-6) / 10).toFixed(1),
    high: room ? String(high) : (Math.floor(own(windowC[1]) * 10 + 1e-6) / 10).toFixed(1),
  };
}
