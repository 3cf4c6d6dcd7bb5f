import { findIngredient } from '../../matter/ingredients/ingredient.js';
import type { Change } from '../advice/types.js';
import { type OpenLine, openAmounts } from '../batch/amounts.js';
import { readLines } from '../batch/lines.js';
import type { BatchDocument, FormulaLine } from '../batch/types.js';
import { newLedger } from '../ledger.js';
import { fixedGrams, inGrams, takenOut } from './refers.js';
import { tidyGrams } from './tidy-grams.js';
import type { ChangesOf } from './types.js';

/**
 * The same batch with isomalt in the place of its xylitol, dry gram for dry gram.
 *
 * Isomalt is no danger to dogs that we know of, and that is all this says: no sweetener is called
 * safe for an animal here. The sweet becomes harder and less sweet; plan both to see by how much.
 *
 * @param batch - As `readBatch` of `vitrose/documents` returns it.
 * @returns the changes, or `none`: `no-xylitol`, `not-readable` where a line cannot be understood.
 * @example
 * const batch = {
 *   format: 'vitrose.batch/1' as const,
 *   formula: [{ ingredient: 'isomalt', massG: 90 }, { ingredient: 'xylitol', massG: 10 }],
 *   cook: { toMoistureMassFraction: 0.01 },
 * };
 * const answer = withoutXylitol(batch);
 * answer.kind === 'changes' ? answer.changes.length : 0 // 2
 */
export function withoutXylitol(batch: BatchDocument): ChangesOf {
  const soft = batch.formula.flatMap((line, index) =>
    line.ingredient === 'xylitol' ? [{ line, index }] : [],
  );
  if (soft.length === 0) return { kind: 'none', reason: 'no-xylitol' };
  const ledger = newLedger();
  const lines = openAmounts(readLines(batch, ledger), ledger);
  if (ledger.problems.length > 0) return { kind: 'none', reason: 'not-readable' };
  const hardDry = findIngredient('isomalt')?.drySolidsMassFraction.value ?? 1;
  const changes: Change[] = [];
  const gone: number[] = [];
  // Two lines of xylitol can go into one of isomalt: each adds to what the one before left.
  const hosts = new Map<number, number>();
  for (const { line, index } of soft) {
    const open = lines.find(({ path }) => path === `/formula/${index}`);
    if (open === undefined) return { kind: 'none', reason: 'not-readable' };
    const host = batch.formula.findIndex(
      (other) =>
        isIsomalt(other) && amountKey(other) === amountKey(line) && isLate(other) === isLate(line),
    );
    const hostLine = batch.formula[host];
    if (hostLine !== undefined && 'massG' in hostLine && 'massG' in line) {
      const ofHost = lines.find(({ path }) => path === `/formula/${host}`)?.drySolids.value ?? 1;
      const massG =
        (hosts.get(host) ?? hostLine.massG) + (line.massG * open.drySolids.value) / ofHost;
      hosts.set(host, massG);
      changes.push({ path: `/formula/${host}/massG`, value: tidyGrams(massG) });
      gone.push(index);
    } else if (
      hostLine !== undefined &&
      'shareOfDrySolids' in hostLine &&
      'shareOfDrySolids' in line
    ) {
      const share = (hosts.get(host) ?? hostLine.shareOfDrySolids) + line.shareOfDrySolids;
      hosts.set(host, share);
      changes.push({ path: `/formula/${host}/shareOfDrySolids`, value: share });
      gone.push(index);
    } else {
      changes.push({
        path: `/formula/${index}`,
        value: asIsomalt(line, open.mass.grams, open.drySolids.value / hardDry),
      });
    }
  }
  const shares = heldReferences(batch, lines);
  if (shares === undefined) return { kind: 'none', reason: 'not-readable' };
  return { kind: 'changes', changes: [...changes, ...shares, ...takenOut(gone)] };
}

/** What was a share of the xylitol, or of the isomalt that takes its place, keeps its grams. */
function heldReferences(
  batch: BatchDocument,
  lines: readonly OpenLine[],
): readonly Change[] | undefined {
  const changes: Change[] = [];
  for (const [index, line] of batch.formula.entries()) {
    if (!('shareOfIngredient' in line)) continue;
    const { ingredient } = line.shareOfIngredient;
    if (
      line.ingredient === 'xylitol' ||
      !['xylitol', 'isomalt', 'isomalt-dry'].includes(ingredient)
    )
      continue;
    const massG = fixedGrams(lines, index);
    if (massG === undefined) {
      // A share of something whose size is not known yet: only of xylitol would nothing be left.
      if (ingredient === 'xylitol') return undefined;
      continue;
    }
    changes.push({ path: `/formula/${index}`, value: inGrams(line, massG) });
  }
  return changes;
}

/** The line as isomalt; a spoon of one is not a spoon of the other, so a measure becomes grams. */
function asIsomalt(line: FormulaLine, grams: number, dryer: number): FormulaLine {
  const { drySolidsMassFraction: _dry, asWritten: _words, ...rest } = line;
  if ('measure' in rest) {
    const { measure: _measure, ...others } = rest;
    return { ...others, ingredient: 'isomalt', massG: tidyGrams(grams * dryer) };
  }
  if ('massG' in rest)
    return { ...rest, ingredient: 'isomalt', massG: tidyGrams(rest.massG * dryer) };
  if ('shareOfFinished' in rest)
    return { ...rest, ingredient: 'isomalt', shareOfFinished: rest.shareOfFinished * dryer };
  if ('shareOfIngredient' in rest) {
    const { ingredient, share } = rest.shareOfIngredient;
    return {
      ...rest,
      ingredient: 'isomalt',
      shareOfIngredient: { ingredient, share: share * dryer },
    };
  }
  return { ...rest, ingredient: 'isomalt' };
}

function isIsomalt({ ingredient }: FormulaLine): boolean {
  return ingredient === 'isomalt' || ingredient === 'isomalt-dry';
}

function isLate({ when }: FormulaLine): boolean {
  return when === 'off-heat';
}

function amountKey(line: FormulaLine): string | undefined {
  return ['massG', 'measure', 'shareOfDrySolids', 'shareOfFinished', 'shareOfIngredient'].find(
    (key) => key in line,
  );
}
