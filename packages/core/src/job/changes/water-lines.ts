import type { Change } from '../advice/types.js';
import type { OpenLine } from '../batch/amounts.js';
import type { BatchDocument, FormulaLine } from '../batch/types.js';
import { fixedGrams, takenOut } from './refers.js';
import { tidyGrams } from './tidy-grams.js';

/** A line of water whose grams are known. */
export type WaterLine = {
  readonly at: number;
  readonly massG: number;
  /** It makes this powder a syrup. */
  readonly isMakeUp: boolean;
};

/** Water that goes in before the boil, the make-up water of this syrup first. */
export function waterLines(
  { formula }: BatchDocument,
  lines: readonly OpenLine[],
  { ingredient }: FormulaLine,
): readonly WaterLine[] {
  return formula
    .flatMap((line, at): WaterLine[] => {
      const massG = fixedGrams(lines, at);
      if (line.ingredient !== 'water' || massG === undefined || line.when === 'off-heat') return [];
      const isMakeUp = 'makeUpWaterFor' in line && line.makeUpWaterFor.ingredient === ingredient;
      return [{ at, massG, isMakeUp }];
    })
    .sort((a, b) => Number(b.isMakeUp) - Number(a.isMakeUp));
}

/** More or less water in the recipe, line by line; make-up water of the syrup becomes plain water. */
export function waterBy(
  batch: BatchDocument,
  waters: readonly WaterLine[],
  changeG: number,
  when: FormulaLine['when'],
): readonly Change[] {
  const plain = waters.filter(({ isMakeUp }) => !isMakeUp);
  const receiver = plain[0] ?? waters[0];
  if (receiver === undefined)
    return changeG < LEAST_WATER_G
      ? []
      : [{ path: '/formula/-', value: water(changeG, when === 'off-heat' ? undefined : when) }];
  let left = changeG;
  const changes: Change[] = [];
  const gone: number[] = [];
  for (const one of waters) {
    const taken = left < 0 ? Math.min(-left, one.massG) : 0;
    left += taken;
    const given = one === receiver && changeG > 0 ? changeG : 0;
    const massG = one.massG - taken + given;
    if (massG < LEAST_WATER_G) gone.push(one.at);
    else if (one.isMakeUp || taken > 0 || given > 0)
      changes.push({
        path: `/formula/${one.at}`,
        value: water(massG, batch.formula[one.at]?.when),
      });
  }
  return [...changes, ...takenOut(gone)];
}

/** Nobody weighs a twentieth of a gram of water. */
const LEAST_WATER_G = 0.05;

function water(massG: number, when: FormulaLine['when']): object {
  return { ingredient: 'water', massG: tidyGrams(massG), ...(when === undefined ? {} : { when }) };
}
