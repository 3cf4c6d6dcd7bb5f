import type { Catalogue } from '../types.js';

/** Words that differ by region, under the name sentences use. */
export const REGION_WORDS = {
  sweet: ['sweet', 'candy'],
  sweets: ['sweets', 'candies'],
  boiledSweets: ['boiled sweets', 'hard candy'],
  glucoseSyrup: ['glucose syrup', 'corn syrup'],
  bakingSoda: ['bicarbonate of soda', 'baking soda'],
  clingFilm: ['cling film', 'plastic wrap'],
} as const satisfies Catalogue['regionWords'];
