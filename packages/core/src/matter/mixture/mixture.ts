import { assemble } from './assemble.js';
import { contentOfPart } from './content-of-part.js';
import type { Mixture, Part } from './types.js';

/**
 * What is in the pan, from what was weighed into it.
 *
 * Each ingredient is split into water, what dissolves and what stays apart (fat, oil, alcohol,
 * pigment). The same pure substance from two ingredients is one; two starch syrups stay two.
 *
 * @param parts - Weighed ingredients, by name or with a record of your own: `massG` 0 to 10⁹ g;
 *   `drySolidsMassFraction` 0 to 1 where the certificate gives it; for starch syrups
 *   `dextroseEquivalent` 1 to 100, `conversion` or the whole `profile`.
 * @returns the mixture: masses in g, fractions 0 to 1, dry solids being everything but water.
 * @throws {@link ModelRangeError} if a number cannot be meant, a name is unknown, a syrup's word is
 *   used for something else, or nothing weighs anything.
 * @example
 * mixture([
 *   { ingredient: 'sucrose', massG: 300 },
 *   { ingredient: 'glucose-syrup', massG: 250 },
 *   { ingredient: 'water', massG: 100 },
 * ]).drySolidsMassFraction // 0.7692
 */
export function mixture(parts: readonly Part[]): Mixture {
  const contents = parts.map(contentOfPart);
  return assemble(
    contents.reduce((sum, content) => sum + content.waterG, 0),
    contents.flatMap((content) => content.solids),
    contents.flatMap((content) => content.apart),
  );
}
