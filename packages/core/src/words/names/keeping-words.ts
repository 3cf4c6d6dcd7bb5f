import type { Catalogue } from '../types.js';

/** How likely it grains. */
export const GRAINING_WORDS = {
  low: 'low',
  watch: 'one to watch',
  likely: 'likely',
  'near-certain': 'near certain',
} as const satisfies Catalogue['graining'];

/** Why nothing is said about graining. */
export const NO_GRAINING = {
  'no-sucrose': 'There is no sucrose in it, so nothing is said about graining.',
  'no-kinetic-data':
    'How soon a mass that is mostly not sucrose grains nobody has measured: no estimate.',
  'not-supersaturated': 'All of its sucrose stays dissolved: it does not grain.',
} as const satisfies Catalogue['noGraining'];

/** Why no days are said for a wrap. */
export const NO_WRAP = {
  open: 'Open or only twisted, it lives in the air of the room.',
  'not-given': 'Say how each piece is wrapped, and the days are worked out.',
  'humidity-not-given': 'Say how damp the store is, and the days of the wrap are worked out.',
  'piece-not-given': 'Say how big a piece is, and the days of the wrap are worked out.',
  'dry-enough': 'The air is dry enough: it takes up too little water to soften.',
  'no-estimate': 'How long this wrap holds is not known here: no estimate.',
  'already-soft': 'It is soft at the temperature of the store, wrapped or not.',
} as const satisfies Catalogue['noWrap'];
