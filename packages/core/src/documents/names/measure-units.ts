import { placesOf, shortened } from '../../job/batch/limits.js';
import type { Problem } from '../../job/batch/problems.js';

/** A bare spoon or cup is not the same in two countries. */
const SPOONS_AND_CUPS: Readonly<Record<string, readonly string[]>> = {
  cup: ['us-cup', 'metric-cup'],
  tablespoon: ['us-tablespoon', 'metric-tablespoon', 'au-tablespoon'],
  tbsp: ['us-tablespoon', 'metric-tablespoon', 'au-tablespoon'],
  teaspoon: ['us-teaspoon', 'metric-teaspoon'],
  tsp: ['us-teaspoon', 'metric-teaspoon'],
};

/** The names a unit is also known under; grams have a field of their own. */
const OTHER_NAMES: Readonly<Record<string, readonly string[]>> = {
  g: ['massG'],
  gram: ['massG'],
  kilo: ['kg'],
  kilogram: ['kg'],
  ounce: ['oz'],
  pound: ['lb'],
  milliliter: ['ml'],
  millilitre: ['ml'],
  cc: ['ml'],
  'fl-oz': ['us-fluid-ounce'],
  'fluid-ounce': ['us-fluid-ounce'],
  'fluid-dram': ['us-fluid-dram'],
};

/** The two drams differ by half: by definition 1/8 US fluid ounce and 1/16 ounce. */
const DRAMS = { usFluidDramMl: 3.6966911953125, avoirdupoisDramG: 1.7718451953125 } as const;

/** Units that are words of the kitchen but not of a document, each with what may be meant. */
export function measureUnitProblems(batch: unknown): readonly Problem[] {
  return placesOf(batch, 'formula/*/measure/unit').flatMap(
    ({ path, value }): readonly Problem[] => {
      if (typeof value !== 'string') return [];
      const word = value
        .trim()
        .toLowerCase()
        .replace(/\.$/, '')
        .replace(/[\s_-]+/g, '-');
      const names = [word, word.replace(/s$/, '')];
      const listed = (
        table: Readonly<Record<string, readonly string[]>>,
      ): readonly string[] | undefined =>
        names.filter((name) => Object.hasOwn(table, name)).map((name) => table[name])[0];

      const received = shortened(value);
      if (names.some((name) => name === 'dram' || name === 'dr')) {
        // A dram of weight is no unit of a document; a sixteenth of the ounce says the same.
        return [
          { code: 'which-dram', path, received, known: ['us-fluid-dram', 'oz'], numbers: DRAMS },
        ];
      }
      const spoons = listed(SPOONS_AND_CUPS);
      if (spoons !== undefined) return [{ code: 'which-unit', path, received, known: spoons }];
      const known = listed(OTHER_NAMES);
      return known === undefined ? [] : [{ code: 'unknown-name', path, received, known }];
    },
  );
}
