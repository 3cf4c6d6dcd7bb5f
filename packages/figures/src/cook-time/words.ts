import type { CookMomentId } from './state.js';

/** Short enough to stand in the drawing. */
export const COOK_MOMENT_LABELS: Readonly<Record<CookMomentId, string>> = {
  'first-boil': 'first boil',
  'turn-down': 'turn down',
  stop: 'stop',
  rest: 'rest until clear',
  'colour-and-flavour': 'colour, flavour',
  acid: 'acid',
  pour: 'pour',
};

export const COOK_TIME_QUESTION = 'How long does it cook, and when does it need a hand?';

export const COOK_TIME_NOTES = [
  'Left out: a draught, a lid, the weather of the day, and minutes lost at the scale. The thermometer decides when to stop, the clock only when to stand ready.',
  'Minutes: this library’s model, an estimate, from the heat that reaches the pan and the water to boil off. After the stop: a pan that cools in the room, an estimate.',
];

/** `16 min`. */
export function minutesText(minutes: number): string {
  return `${wholeMinutes(minutes)} min`;
}

/** `about 16 minutes`. */
export function aboutMinutes(minutes: number): string {
  const whole = wholeMinutes(minutes);
  if (whole === 0) return 'less than a minute';
  return `about ${whole} ${whole === 1 ? 'minute' : 'minutes'}`;
}

/** `12 to 20`; one number where both are the same. */
export function minutesSpan([low, high]: readonly [number, number]): string {
  const [first, last] = [wholeMinutes(low), wholeMinutes(high)];
  return first === last ? `${first}` : `${first} to ${last}`;
}

/** No boil is known to a tenth of a minute. */
function wholeMinutes(minutes: number): number {
  return Math.round(minutes);
}
