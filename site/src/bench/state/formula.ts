import type { Amount, BatchDocument, FormulaLine, LineDetails, When } from 'vitrose';
import type { MeantAmount } from './read/amount.js';

/** What a line is a share of, where it is a share. */
export type ShareKind = 'drySolids' | 'finished' | 'ingredient' | 'makeUp';

/** The line without its amount. */
export function detailsOf(line: FormulaLine): LineDetails {
  const { ingredient, drySolidsMassFraction, dextroseEquivalent, conversion, profile, when } = line;
  return known({
    ingredient,
    drySolidsMassFraction,
    dextroseEquivalent,
    conversion,
    profile,
    when,
  });
}

/** Which kind of share the amount is, if it is one. */
export function shareKindOf(line: FormulaLine): ShareKind | undefined {
  if ('shareOfDrySolids' in line) return 'drySolids';
  if ('shareOfFinished' in line) return 'finished';
  if ('shareOfIngredient' in line) return 'ingredient';
  if ('makeUpWaterFor' in line) return 'makeUp';
  return undefined;
}

/** The share itself, 0 to 1, or more where it is of another ingredient. */
export function shareOf(line: FormulaLine): number | undefined {
  if ('shareOfDrySolids' in line) return line.shareOfDrySolids;
  if ('shareOfFinished' in line) return line.shareOfFinished;
  if ('shareOfIngredient' in line) return line.shareOfIngredient.share;
  if ('makeUpWaterFor' in line) return line.makeUpWaterFor.drySolidsMassFraction;
  return undefined;
}

/** The line with another amount; a share stays a share of the same thing. */
export function withAmount(line: FormulaLine, meant: MeantAmount): FormulaLine {
  const details = detailsOf(line);
  if (meant.kind === 'mass') return { ...details, massG: meant.massG };
  if (meant.kind === 'measure') {
    const { quantity, unit, written } = meant;
    return { ...details, measure: { quantity, unit }, asWritten: written };
  }
  return { ...details, ...shareAmount(line, meant.share) };
}

function shareAmount(line: FormulaLine, share: number): Amount {
  if ('shareOfFinished' in line) return { shareOfFinished: share };
  if ('shareOfIngredient' in line)
    return { shareOfIngredient: { ...line.shareOfIngredient, share } };
  if ('makeUpWaterFor' in line) {
    return { makeUpWaterFor: { ...line.makeUpWaterFor, drySolidsMassFraction: share } };
  }
  return { shareOfDrySolids: share };
}

/** The batch with one line changed. */
export function withLine(batch: BatchDocument, index: number, line: FormulaLine): BatchDocument {
  return { ...batch, formula: batch.formula.map((old, at) => (at === index ? line : old)) };
}

/**
 * The batch with one share of the dry solids changed at a fixed total: the others give way in
 * proportion, so that the shares go on adding up.
 */
export function withShareOfDrySolids(
  batch: BatchDocument,
  index: number,
  share: number,
): BatchDocument {
  const others = batch.formula.reduce(
    (sum, line, at) =>
      sum + (at !== index && 'shareOfDrySolids' in line ? line.shareOfDrySolids : 0),
    0,
  );
  const before = batch.formula[index];
  const total =
    others + (before !== undefined && 'shareOfDrySolids' in before ? before.shareOfDrySolids : 0);
  const left = others > 0 ? Math.max(0, total - share) / others : 1;
  return {
    ...batch,
    formula: batch.formula.map((line, at) => {
      if (!('shareOfDrySolids' in line)) return line;
      const next = at === index ? share : line.shareOfDrySolids * left;
      return { ...line, shareOfDrySolids: Number(next.toPrecision(12)) };
    }),
  };
}

/** The batch with a line that goes in at another moment. */
export function withWhen(batch: BatchDocument, index: number, when: When): BatchDocument {
  const line = batch.formula[index];
  return line === undefined ? batch : withLine(batch, index, { ...line, when });
}

/** Only what is there: a document has no empty fields. */
export function known<Value extends object>(value: Value): Value {
  return Object.fromEntries(
    Object.entries(value).filter(([, held]) => held !== undefined),
  ) as Value;
}
