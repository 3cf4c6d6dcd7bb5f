import type { Catalogue } from '../types.js';

/** The moments of a cook. */
export const COOK_MOMENTS = {
  'first-boil': 'first boil',
  'turn-down': 'turn the heat down',
  stop: 'stop',
  rest: 'clear after its rest',
  'colour-and-flavour': 'colour and flavour',
  acid: 'acid',
  pour: 'pour',
} as const satisfies Catalogue['cookMoments'];

/** What can be done to a mass, without its temperatures. */
export const WINDOW_WORDS = {
  deposit: 'runs into moulds by itself',
  'pour-by-hand': 'can be poured',
  fold: 'can be folded and rolled to ropes',
  pull: 'can be pulled',
  stamp: 'can be cut and stamped',
  stick: 'sticks to what it touches',
  demould: 'comes out of the mould',
  wrap: 'can be wrapped',
} as const satisfies Catalogue['windows'];
