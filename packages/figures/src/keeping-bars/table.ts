import type { FigureTable } from '../figure/data-table.js';
import type { KeepingBarsState } from './state.js';
import { humidity } from './words.js';

/** The humidities in figures, the driest first; only those that are known. */
export function keepingBarsTable(state: KeepingBarsState): FigureTable {
  const { relativeHumidity, equilibrium, criticalRelativeHumidity, stickyFrom, stickyAt } = state;
  const all: readonly (readonly [string, number | undefined])[] = [
    ['at rest with the air, neither drier nor wetter', equilibrium],
    ['goes soft in time above', criticalRelativeHumidity],
    ['begins to stick at', stickyFrom],
    ['sticky all over from', stickyAt],
    ['your room', relativeHumidity],
  ];
  return {
    caption: 'What the air does to a bare sweet',
    heads: ['what', 'humidity'],
    rows: all
      .flatMap(([what, at]) => (at === undefined ? [] : [{ what, at }]))
      .sort((one, other) => one.at - other.at)
      .map(({ what, at }) => [what, humidity(at)]),
  };
}
