import { reading, temperature } from '../ladder/temperature-words.js';
import type { TemperatureAxisState, WorkingWindow, WorkingWindowId } from './state.js';

/** What the mass does, as a sentence has it. */
const DOES: Readonly<Record<WorkingWindowId, string>> = {
  deposit: 'fills moulds by itself',
  'pour-by-hand': 'pours by hand',
  fold: 'folds',
  pull: 'pulls',
  stamp: 'is stamped and cut',
  stick: 'sticks to what it touches',
  demould: 'turns out of the mould',
  wrap: 'is wrapped',
};

/**
 * The temperature axis in words: what a reader hears who does not see it.
 *
 * @param state - The state it is drawn from.
 */
export function describeTemperatureAxis(state: TemperatureAxisState): string {
  const { stopC, glassC, glassBandC, roomC, storeC, units = 'c' } = state;
  const [low, high] = glassBandC;
  const does = state.windows.map((window) => `${DOES[window.id]} ${whereWords(window, state)}`);
  return [
    `One axis of temperatures, from the stop at ${temperature(stopC, units)} down to your room at ${temperature(roomC, units)}.`,
    does.length === 0 ? '' : `The mass ${does.join(', ')}.`,
    `Its glass point is ${temperature(glassC, units)}, somewhere from ${reading(low, units)} to ${reading(high, units)}: colder, it stays hard.`,
    storeC === undefined ? '' : `Your store is at ${temperature(storeC, units)}.`,
    mouldWords(state),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

/** `from 92 down to 82 °C`. */
export function whereWords(
  { lowC, highC }: WorkingWindow,
  { units = 'c' }: Pick<TemperatureAxisState, 'units'>,
): string {
  if (lowC === undefined)
    return highC === undefined ? 'at any temperature' : `from ${temperature(highC, units)} down`;
  if (highC === undefined) return `above ${temperature(lowC, units)}`;
  return `from ${reading(highC, units)} down to ${temperature(lowC, units)}`;
}

function mouldWords({ mouldMaxC, stopC, units = 'c' }: TemperatureAxisState): string {
  if (mouldMaxC === undefined) return '';
  const bears = `The mould bears ${temperature(mouldMaxC, units)}`;
  return mouldMaxC < stopC
    ? `${bears}: let the mass cool to that before it goes in.`
    : `${bears}, and the mass is no hotter.`;
}
