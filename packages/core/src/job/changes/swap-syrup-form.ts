import { isNone } from '../../foundation/results/is-none.js';
import { findIngredient } from '../../matter/ingredients/ingredient.js';
import { swapDriedForSyrup, swapSyrupForDried } from '../../models/syrups/index.js';
import type { Change } from '../advice/types.js';
import { type OpenLine, openAmounts } from '../batch/amounts.js';
import { readLines } from '../batch/lines.js';
import type { BatchDocument, FormulaLine } from '../batch/types.js';
import { newLedger } from '../ledger.js';
import { fixedGrams, heldShares, inGrams } from './refers.js';
import { type Swap, swapShare } from './swap-share.js';
import { tidyGrams } from './tidy-grams.js';
import type { ChangesOf } from './types.js';
import { waterBy, waterLines } from './water-lines.js';

const OTHER_FORM = {
  'glucose-syrup': 'dried-glucose-syrup',
  'dried-glucose-syrup': 'glucose-syrup',
} as const;

/**
 * The same batch with dried syrup in the place of liquid, or liquid in the place of dried.
 *
 * The solids, their dextrose equivalent and the water of the whole stay what they are: a powder
 * needs the water the syrup would have brought, and a syrup brings the water the powder needed.
 *
 * @param batch - As `readBatch` of `vitrose/documents` returns it.
 * @param index - Place of the syrup in the formula, from 0.
 * @returns the changes, or `none`: `no-such-line`, `not-a-starch-syrup`, `too-little-water` where the
 *   recipe has less water than the syrup brings, `not-readable`.
 * @example
 * const batch = {
 *   format: 'vitrose.batch/1' as const,
 *   formula: [{ ingredient: 'glucose-syrup', drySolidsMassFraction: 0.8, massG: 300 }, { ingredient: 'water', massG: 100 }],
 *   cook: { toSeaLevelC: 148 },
 * };
 * const answer = swapSyrupForm(batch, 0);
 * answer.kind === 'changes' ? answer.changes.length : 0 // 2
 */
export function swapSyrupForm(batch: BatchDocument, index: number): ChangesOf {
  const line = batch.formula[index];
  if (line === undefined) return { kind: 'none', reason: 'no-such-line' };
  const to = OTHER_FORM[line.ingredient as keyof typeof OTHER_FORM];
  if (to === undefined) return { kind: 'none', reason: 'not-a-starch-syrup' };
  const ledger = newLedger();
  const lines = openAmounts(readLines(batch, ledger), ledger);
  const open = lines.find(({ path }) => path === `/formula/${index}`);
  if (open === undefined || ledger.problems.length > 0)
    return { kind: 'none', reason: 'not-readable' };
  const swap: Swap = {
    line,
    index,
    to,
    dryHere: open.drySolids.value,
    dryThere: findIngredient(to)?.drySolidsMassFraction.value ?? 1,
    isAlone: batch.formula.filter(({ ingredient }) => ingredient === line.ingredient).length === 1,
  };
  const massG = fixedGrams(lines, index);
  return massG === undefined ? swapShare(batch, lines, swap) : swapGrams(batch, lines, swap, massG);
}

function swapGrams(
  batch: BatchDocument,
  lines: readonly OpenLine[],
  { line, index, to, dryHere, dryThere, isAlone }: Swap,
  massG: number,
): ChangesOf {
  // Other lines of the same name go on being what a share is of.
  const shares = isAlone
    ? heldShares(batch, lines, [line.ingredient, to], dryHere / dryThere)
    : allInGrams(batch, lines, line.ingredient);
  if (shares === undefined) return { kind: 'none', reason: 'not-readable' };
  const waters = waterLines(batch, lines, line);
  const recipeWaterG = waters.reduce((sum, water) => sum + water.massG, 0);
  const [here, there] = [{ drySolidsMassFraction: dryHere }, { drySolidsMassFraction: dryThere }];
  const swapped =
    to === 'dried-glucose-syrup'
      ? swapSyrupForDried({ syrupG: massG, syrup: here, dried: there, recipeWaterG })
      : swapDriedForSyrup({ driedG: massG, dried: here, syrup: there, recipeWaterG });
  if (isNone(swapped)) return { kind: 'none', reason: 'too-little-water' };
  const newG = 'driedG' in swapped ? swapped.driedG : swapped.syrupG;
  return {
    kind: 'changes',
    changes: [
      { path: `/formula/${index}`, value: named(line, to, newG) },
      ...shares,
      ...waterBy(batch, waters, swapped.waterChangeG, line.when),
    ],
  };
}

/** What is a share of the line keeps its grams; nothing where these are not known yet. */
function allInGrams(
  { formula }: BatchDocument,
  lines: readonly OpenLine[],
  name: string,
): readonly Change[] | undefined {
  const changes: Change[] = [];
  for (const [index, line] of formula.entries()) {
    if (!('shareOfIngredient' in line) || line.shareOfIngredient.ingredient !== name) continue;
    const massG = fixedGrams(lines, index);
    if (massG === undefined) return undefined;
    changes.push({ path: `/formula/${index}`, value: inGrams(line, massG) });
  }
  return changes;
}

/** What the label of one form says does not hold for the other; how far the starch is cut does. */
function named(line: FormulaLine, ingredient: string, massG: number): object {
  const { drySolidsMassFraction: _dry, ...kept } = inGrams(line, massG) as FormulaLine;
  return { ...kept, ingredient, massG: tidyGrams(massG) };
}
