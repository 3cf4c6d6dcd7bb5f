import { temperature } from '../ladder/temperature-words.js';
import { type CookCourse, cookCourse } from './course.js';
import type { CookMoment, CookMomentId, CookTimeState } from './state.js';
import { aboutMinutes, minutesSpan } from './words.js';

/**
 * The time line of a cook in words: what a reader hears who does not see it.
 *
 * @param state - The state it is drawn from.
 */
export function describeCookTime(state: CookTimeState): string {
  const course = cookCourse(state);
  return [
    stopSentence(state, course),
    turnSentence(state, course),
    coolSentence(state, course),
    otherSentence(state),
  ]
    .filter((sentence) => sentence !== '')
    .join(' ');
}

function stopSentence(state: CookTimeState, { moments, stop }: CookCourse): string {
  const { units = 'c', bandMinutes } = state;
  const boil = moments.find(({ id }) => id === 'first-boil');
  const begins =
    boil === undefined ? 'It' : `It first boils after ${aboutMinutes(boil.minutes)} and`;
  const span = minutesSpan(bandMinutes);
  const band = span.includes(' to ') ? `, somewhere from ${span}` : '';
  return `${begins} reaches the stop, ${temperature(stop.temperatureC, units)}, after ${aboutMinutes(stop.minutes)}${band}.`;
}

function turnSentence({ units = 'c' }: CookTimeState, { moments }: CookCourse): string {
  const turn = moments.find(({ id }) => id === 'turn-down');
  if (turn === undefined) return '';
  return `Turn the heat down at ${temperature(turn.temperatureC, units)}, after ${aboutMinutes(turn.minutes)}.`;
}

const AFTER_STOP: Readonly<Partial<Record<CookMomentId, string>>> = {
  rest: 'it has rested clear',
  'colour-and-flavour': 'colour and flavour go in',
  acid: 'the acid goes in',
  pour: 'it is poured',
};

function coolSentence(state: CookTimeState, { late }: CookCourse): string {
  const parts = late.flatMap((moment) => {
    const words = AFTER_STOP[moment.id];
    return words === undefined ? [] : [`${words} ${whenWords(moment, state)}`];
  });
  if (parts.length === 0) return '';
  return `Then it cools: ${parts.join(', ')}.`;
}

function whenWords({ minutes, temperatureC }: CookMoment, { units = 'c' }: CookTimeState): string {
  return `after ${aboutMinutes(minutes)} at ${temperature(temperatureC, units)}`;
}

function otherSentence({ other, units = 'c' }: CookTimeState): string {
  const end = other?.path.at(-1);
  if (other === undefined || end === undefined) return '';
  return `The dashed line is ${other.label}: its stop, ${temperature(end.temperatureC, units)}, comes after ${aboutMinutes(end.minutes)}.`;
}
