import type { Change } from '../advice/types.js';
import type { OpenLine } from '../batch/amounts.js';
import type { BatchDocument, FormulaLine } from '../batch/types.js';
import { tidyGrams } from './tidy-grams.js';

/** The grams of a line where nothing else of the batch has to be known for them. */
export function fixedGrams(lines: readonly OpenLine[], index: number): number | undefined {
  const mass = lines.find(({ path }) => path === `/formula/${index}`)?.mass;
  return mass !== undefined && mass.perSolid === 0 && mass.perFinished === 0
    ? mass.grams
    : undefined;
}

/** The same line with its amount in grams and nothing said about another line. */
export function inGrams(line: FormulaLine, massG: number): object {
  const { ingredient, drySolidsMassFraction, dextroseEquivalent, conversion, profile, when } = line;
  return {
    ingredient,
    massG: tidyGrams(massG),
    ...(drySolidsMassFraction === undefined ? {} : { drySolidsMassFraction }),
    ...(dextroseEquivalent === undefined ? {} : { dextroseEquivalent }),
    ...(conversion === undefined ? {} : { conversion }),
    ...(profile === undefined ? {} : { profile }),
    ...(when === undefined ? {} : { when }),
  };
}

/** How much of another ingredient's mass a line is, where it is said so. */
function shareOf(line: FormulaLine, ingredient: string): number | undefined {
  return 'shareOfIngredient' in line && line.shareOfIngredient.ingredient === ingredient
    ? line.shareOfIngredient.share
    : undefined;
}

/**
 * Lines that are a share of an ingredient that is about to be another: they keep their grams, or,
 * where these are not known yet, the same mass as a share of the new one.
 *
 * @param heavier - Grams of the new ingredient for each gram of the old.
 */
export function heldShares(
  { formula }: BatchDocument,
  lines: readonly OpenLine[],
  [from, to]: readonly [from: string, to: string],
  heavier: number,
): readonly Change[] {
  return formula.flatMap((line, index): Change[] => {
    const share = shareOf(line, from);
    if (share === undefined) return [];
    const massG = fixedGrams(lines, index);
    return [
      massG === undefined
        ? {
            path: `/formula/${index}/shareOfIngredient`,
            value: { ingredient: to, share: share / heavier },
          }
        : { path: `/formula/${index}`, value: inGrams(line, massG) },
    ];
  });
}

/** Taken out last and from the end, so that every path before still means the line it was written for. */
export function takenOut(indices: readonly number[]): readonly Change[] {
  return [...indices]
    .sort((a, b) => b - a)
    .map((index) => ({ path: `/formula/${index}`, value: null }));
}
