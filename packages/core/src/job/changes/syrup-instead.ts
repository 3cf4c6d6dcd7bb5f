import { scaleLine } from '../advice/amounts.js';
import type { Change } from '../advice/types.js';
import type { WeighedLine } from '../plan/outcome.js';
import { tidyGrams } from './tidy-grams.js';

/** Share of the sucrose that becomes dried glucose syrup: 70:30, the drier end of the trade. */
export const SYRUP_INSTEAD = 0.3;

const DRIED_SYRUP_SOLIDS = 0.96;

/** Part of the sucrose as dried glucose syrup; nothing where no sucrose goes in before the boil. */
export function syrupInstead({
  lines,
}: {
  readonly lines: readonly WeighedLine[];
}): readonly Change[] {
  const sugar = lines.find(({ id, late }) => id === 'sucrose' && !late);
  if (sugar === undefined) return [];
  const index = Number(sugar.path.split('/')[2]);
  const amount =
    'shareOfDrySolids' in sugar.line
      ? { shareOfDrySolids: sugar.line.shareOfDrySolids * SYRUP_INSTEAD }
      : { massG: tidyGrams((sugar.massG * SYRUP_INSTEAD) / DRIED_SYRUP_SOLIDS) };
  return [
    scaleLine(sugar.line, index, 1 - SYRUP_INSTEAD),
    { path: '/formula/-', value: { ingredient: 'dried-glucose-syrup', ...amount } },
  ];
}
