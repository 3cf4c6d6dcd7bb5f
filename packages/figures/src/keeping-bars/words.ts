import { printed } from '../ladder/temperature-words.js';

export const KEEPING_BARS_QUESTION = 'What does the air of the room do to a bare sweet?';

export const KEEPING_BARS_NOTES = [
  'Left out: the wrap, which holds the air off; how fast it goes; warmth, which makes all of it sooner. A sweet that takes up water grains sooner too.',
  'Humidities: this library’s model, an estimate, from the water in the sweet and the air it is at rest with.',
];

/** `45 %`. */
export function humidity(relativeHumidity: number): string {
  return `${printed(100 * relativeHumidity, 0)} %`;
}
