import type { Amount, BatchDocument, FormulaLine, PlanDocument, PlannedLine } from 'vitrose';
import { detailsOf, known } from './formula.js';

/** Whether any amount is a share of the dry solids. */
export function isInShares({ formula }: BatchDocument): boolean {
  return formula.some((line) => 'shareOfDrySolids' in line);
}

/**
 * The same batch by per cent at a fixed total: what boils as shares of the dry solids, its water as
 * a share of the largest of them, what goes in late as a share of the finished mass.
 */
export function inShares(batch: BatchDocument, plan: PlanDocument): BatchDocument {
  const rows = batch.formula.map((line, at) => ({ line, planned: plan.formula[at] }));
  const early = rows.filter(({ line, planned }) => isEarly(line) && (planned?.drySolidsG ?? 0) > 0);
  const solidsG = early.reduce((sum, { planned }) => sum + (planned?.drySolidsG ?? 0), 0);
  const main = early.reduce<(typeof early)[number] | undefined>(
    (largest, row) =>
      (row.planned?.drySolidsG ?? 0) > (largest?.planned?.drySolidsG ?? 0) ? row : largest,
    undefined,
  );
  const finishedG = plan.yield.finishedG.value;
  if (main === undefined || solidsG <= 0) return batch;
  // Shares are of the planned solids, so that they sum to one however the cook's figures round.
  const formula = rows.map(({ line, planned }): FormulaLine => {
    if (planned === undefined) return line;
    return { ...detailsOf(line), ...shareAmount(line, planned, { solidsG, finishedG, main }) };
  });
  const { count: _count, massG: _massG, ...pieces } = batch.pieces ?? {};
  const size = pieceSize(batch, plan);
  return {
    ...batch,
    formula,
    pieces: known({ ...pieces, ...size, finishedMassG: exact(finishedG) }),
  };
}

/** The same batch by weight: each line in the grams the plan gives it. */
export function inWeights(batch: BatchDocument, plan: PlanDocument): BatchDocument {
  const formula = batch.formula.map((line, at): FormulaLine => {
    const massG = plan.formula[at]?.massG.value;
    return massG === undefined || 'measure' in line
      ? line
      : { ...detailsOf(line), massG: roundedMass(massG) };
  });
  const { finishedMassG: _finished, ...pieces } = batch.pieces ?? {};
  const { pieces: _pieces, ...rest } = batch;
  return Object.keys(pieces).length === 0 ? { ...rest, formula } : { ...batch, formula, pieces };
}

/**
 * The batch by weight with one line made a share of the present dry solids: the other solids give
 * way in proportion, so that the total stays.
 */
export function withWeightShare(
  batch: BatchDocument,
  plan: PlanDocument,
  index: number,
  share: number,
): BatchDocument {
  const shared = inShares(batch, plan);
  const line = shared.formula[index];
  if (line === undefined || !('shareOfDrySolids' in line) || share >= 1) return batch;
  const left = (1 - share) / (1 - line.shareOfDrySolids);
  return {
    ...batch,
    formula: batch.formula.map((old, at): FormulaLine => {
      const sharedLine = shared.formula[at];
      const massG = plan.formula[at]?.massG.value;
      if (massG === undefined || sharedLine === undefined || !('shareOfDrySolids' in sharedLine))
        return old;
      const times = at === index ? share / line.shareOfDrySolids : left;
      return { ...detailsOf(old), massG: roundedMass(massG * times) };
    }),
  };
}

type Whole = {
  readonly solidsG: number;
  readonly finishedG: number;
  readonly main: { readonly line: FormulaLine; readonly planned: PlannedLine | undefined };
};

function shareAmount(line: FormulaLine, planned: PlannedLine, whole: Whole): Amount {
  const massG = planned.massG.value;
  if (!isEarly(line)) return { shareOfFinished: exact(massG / whole.finishedG) };
  if (planned.drySolidsG > 0) {
    return { shareOfDrySolids: exact(planned.drySolidsG / whole.solidsG) };
  }
  const mainG = whole.main.planned?.massG.value ?? massG;
  const share = exact(massG / mainG);
  return { shareOfIngredient: { ingredient: whole.main.line.ingredient, share } };
}

function pieceSize({ mould, pieces }: BatchDocument, plan: PlanDocument): { massG?: number } {
  const known = pieces?.cavityMl !== undefined || mould?.cavityMl !== undefined;
  const massG = pieces?.massG ?? plan.yield.pieceG?.value;
  return known || massG === undefined ? {} : { massG: Math.round(massG * 10) / 10 };
}

function isEarly({ when }: FormulaLine): boolean {
  return when !== 'off-heat';
}

/** Whole grams where a kitchen scale shows whole grams, tenths below ten. */
function roundedMass(massG: number): number {
  return massG >= 10 ? Math.round(massG) : Number(massG.toPrecision(2));
}

function exact(value: number): number {
  return Number(value.toPrecision(8));
}
