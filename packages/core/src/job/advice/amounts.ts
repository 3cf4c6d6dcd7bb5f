import type { Amount } from '../batch/types.js';
import { tidyGrams } from '../changes/tidy-grams.js';
import type { AdviceContext } from './context.js';
import type { Change } from './types.js';

/**
 * Changes that make the whole batch larger or smaller and leave its proportions alone. Where the
 * pieces set the size, their number changes; the film on the pan stays what it is.
 */
export function scaleBatch(
  {
    batch,
    yield: { finishedG, leftBehindG, breakFraction, pieceG },
  }: Pick<AdviceContext, 'batch' | 'yield'>,
  factor: number,
): readonly Change[] {
  const size: Change[] = batch.formula.flatMap((line, index) =>
    'massG' in line || 'measure' in line ? [scaleLine(line, index, factor)] : [],
  );
  const { count, finishedMassG } = batch.pieces ?? {};
  const sizedByPieces = size.length === 0;
  if (sizedByPieces && finishedMassG !== undefined)
    size.push({ path: '/pieces/finishedMassG', value: finishedMassG * factor });
  else if (sizedByPieces && count !== undefined && pieceG !== undefined) {
    const film = batch.pieces?.lossFraction === undefined && batch.pan?.capacityMl !== undefined;
    const poured = film
      ? finishedG.value * factor - leftBehindG.value
      : finishedG.value * factor * (1 - leftBehindG.value / finishedG.value);
    const pieces = (poured * (1 - breakFraction)) / pieceG.value;
    size.push({
      path: '/pieces/count',
      value: Math.max(1, factor > 1 ? Math.ceil(pieces) : Math.floor(pieces)),
    });
  }
  return size;
}

/** The change that gives one line more or less of itself, however its amount is said. */
export function scaleLine(line: Amount, index: number, factor: number): Change {
  const path = `/formula/${index}`;
  if ('massG' in line) return { path: `${path}/massG`, value: tidyGrams(line.massG * factor) };
  if ('measure' in line)
    return { path: `${path}/measure/quantity`, value: tidyGrams(line.measure.quantity * factor) };
  if ('shareOfDrySolids' in line)
    return { path: `${path}/shareOfDrySolids`, value: line.shareOfDrySolids * factor };
  if ('shareOfFinished' in line)
    return { path: `${path}/shareOfFinished`, value: line.shareOfFinished * factor };
  if ('shareOfIngredient' in line)
    return {
      path: `${path}/shareOfIngredient/share`,
      value: line.shareOfIngredient.share * factor,
    };
  return {
    path: `${path}/makeUpWaterFor/drySolidsMassFraction`,
    value: line.makeUpWaterFor.drySolidsMassFraction / factor,
  };
}

/** Place of a line in the formula, from its path. */
export function lineIndex(path: string): number {
  return Number(path.split('/')[2]);
}
