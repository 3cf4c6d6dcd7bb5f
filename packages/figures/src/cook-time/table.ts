import type { FigureTable } from '../figure/data-table.js';
import { degrees, reading } from '../ladder/temperature-words.js';
import { cookCourse } from './course.js';
import type { CookTimeState } from './state.js';
import { COOK_MOMENT_LABELS, minutesSpan, minutesText } from './words.js';

/** The moments of a cook in figures. */
export function cookTimeTable(state: CookTimeState): FigureTable {
  const { units = 'c', bandMinutes, other } = state;
  const { moments } = cookCourse(state);
  const end = other?.path.at(-1);
  const rows = moments.map(({ id, minutes, temperatureC }) => [
    COOK_MOMENT_LABELS[id],
    id === 'stop' ? `${minutesText(minutes)} (${minutesSpan(bandMinutes)})` : minutesText(minutes),
    reading(temperatureC, units),
  ]);
  const others =
    other === undefined || end === undefined
      ? []
      : [[`stop of ${other.label}`, minutesText(end.minutes), reading(end.temperatureC, units)]];
  return {
    caption: 'Moments of the cook, from the cold pan',
    heads: ['moment', 'after', `the mass, ${degrees(units)}`],
    rows: [...rows, ...others],
  };
}
