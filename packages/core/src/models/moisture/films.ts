// biome-ignore-all format: one film a line, as in a table

import type { CitedRange } from '../../foundation/validity/constants.js';

/** The films a wrap can be made of, by name. */
export const WRAP_FILM_IDS = [
  'ldpe', 'hdpe', 'cast-pp', 'oriented-pp', 'oriented-pp-laminate', 'metallised-pp-laminate',
  'pet', 'pvdc', 'polystyrene', 'nylon', 'pvdc-multilayer', 'coated-cellulose',
  'foil-laminate', 'waxed-paper', 'plain-paper',
] as const;

/** The name of a film. */
export type WrapFilmId = (typeof WRAP_FILM_IDS)[number];

/** A film's transmission with both ends of its range. */
export type WrapFilm = CitedRange & { readonly low: number; readonly high: number };

/**
 * Water vapour through films at 38 °C and 0.90 relative humidity, g/(m²·day): middle, low and high. For
 * 25 µm unless it is a laminate or paper; twice as thick lets through about half.
 */
export const WRAP_FILMS = {
  ldpe: { value: 20.5, low: 10, high: 31, source: 'food-packages', grade: 'secondary', note: 'low end: films-2019' },
  hdpe: { value: 7.35, low: 4.7, high: 10, source: 'food-packages', grade: 'secondary', note: 'high end: films-2019' },
  'cast-pp': { value: 10.65, low: 9.3, high: 12, source: 'food-packages', grade: 'secondary', note: 'high end: films-2019' },
  'oriented-pp': { value: 5.45, low: 3.1, high: 7.8, source: 'food-packages', grade: 'secondary' },
  'oriented-pp-laminate': { value: 3.15, low: 2.3, high: 4, source: 'biscuit-wraps-1999', grade: 'secondary' },
  'metallised-pp-laminate': { value: 0.75, low: 0.5, high: 1, source: 'biscuit-wraps-1999', grade: 'secondary' },
  pet: { value: 23, low: 15, high: 31, source: 'food-packages', grade: 'secondary', note: 'low end: films-2019' },
  pvdc: { value: 4.8, low: 0.3, high: 9.3, source: 'food-packages', grade: 'secondary' },
  polystyrene: { value: 131.5, low: 108, high: 155, source: 'food-packages', grade: 'secondary' },
  nylon: { value: 232.5, low: 155, high: 310, source: 'food-packages', grade: 'secondary' },
  'pvdc-multilayer': { value: 2.3, low: 2.3, high: 2.3, source: 'food-packages', grade: 'secondary' },
  'coated-cellulose': { value: 11, low: 7, high: 15, source: 'recalled-films', grade: 'memory' },
  'foil-laminate': { value: 0.05, low: 0, high: 0.1, source: 'recalled-films', grade: 'memory', note: 'unflexed' },
  'waxed-paper': { value: 55, low: 10, high: 100, source: 'recalled-films', grade: 'memory', note: 'creases decide' },
  'plain-paper': { value: 1150, low: 300, high: 2000, source: 'recalled-films', grade: 'memory' },
} as const satisfies Readonly<Record<WrapFilmId, WrapFilm>>;
