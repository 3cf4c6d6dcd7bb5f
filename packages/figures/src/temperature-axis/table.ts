import type { FigureTable } from '../figure/data-table.js';
import { degrees, reading } from '../ladder/temperature-words.js';
import { axisMarks } from './marks.js';
import type { TemperatureAxisState } from './state.js';
import { MARK_LABELS, windowName } from './words.js';

/** Windows and marks in figures. */
export function temperatureAxisTable(state: TemperatureAxisState): FigureTable {
  const { windows, glassBandC, units = 'c' } = state;
  const end = (temperatureC: number | undefined): string =>
    temperatureC === undefined ? 'open' : reading(temperatureC, units);
  const [low, high] = glassBandC;
  return {
    caption: 'What the mass allows, hottest first; then what is marked',
    heads: ['what', `from, ${degrees(units)}`, `down to, ${degrees(units)}`],
    rows: [
      ...windows.map(({ id, lowC, highC }) => [windowName(id), end(highC), end(lowC)]),
      ...axisMarks(state).map(({ id, temperatureC }) =>
        id === 'glass'
          ? [
              `${MARK_LABELS.glass}, ${reading(temperatureC, units)}`,
              reading(high, units),
              reading(low, units),
            ]
          : [MARK_LABELS[id], reading(temperatureC, units), reading(temperatureC, units)],
      ),
    ],
  };
}
