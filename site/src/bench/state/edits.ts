import {
  applyChanges,
  type BatchDocument,
  type BatchTarget,
  type FormulaLine,
  type PlanDocument,
  type Remedy,
  type When,
} from 'vitrose';
import { withAmount, withLine, withShareOfDrySolids, withWhen } from './formula.js';
import { withTable } from './history.js';
import { freshKeys, nextKey } from './line-keys.js';
import { withValue } from './place.js';
import type { MeantAmount } from './read/amount.js';
import { KITCHEN_PARTS } from './recipe.js';
import { inShares, inWeights, withWeightShare } from './shares.js';
import { withTarget } from './target.js';
import type { BenchState } from './types.js';

/** A number, a word or a group somewhere in the document; no value takes it out. */
export function setValue(state: BenchState, path: string, value: unknown): BenchState {
  return laid(state, withValue(state.now.batch, path, value), path);
}

/** An amount as it was meant. A share keeps the total; a weight is a weight. */
export function setAmount(
  state: BenchState,
  index: number,
  meant: MeantAmount,
  plan: PlanDocument | undefined,
): BenchState {
  const { batch } = state.now;
  const line = batch.formula[index];
  if (line === undefined) return state;
  const field = `/formula/${index}/amount`;
  if (meant.kind === 'share' && 'shareOfDrySolids' in line) {
    return laid(state, withShareOfDrySolids(batch, index, meant.share), field);
  }
  if (meant.kind === 'share' && ('massG' in line || 'measure' in line)) {
    if (line.when === 'off-heat') {
      return laid(state, withLine(batch, index, asShareOfFinished(line, meant.share)), field);
    }
    if (plan === undefined) return state;
    return laid(state, withWeightShare(batch, plan, index, meant.share), field);
  }
  return laid(state, withLine(batch, index, withAmount(line, meant)), field);
}

/** Another ingredient in the line: what the old one's label said goes with it. */
export function setIngredient(
  state: BenchState,
  index: number,
  ingredient: string,
  details: Partial<Pick<FormulaLine, 'dextroseEquivalent' | 'drySolidsMassFraction'>> = {},
): BenchState {
  const line = state.now.batch.formula[index];
  if (line === undefined) return state;
  const {
    dextroseEquivalent: _de,
    drySolidsMassFraction: _dry,
    conversion: _conversion,
    profile: _profile,
    ...rest
  } = line;
  const next = { ...rest, ingredient, ...details } as FormulaLine;
  return laid(state, withLine(state.now.batch, index, next));
}

/** When a line goes in. */
export function setWhen(state: BenchState, index: number, when: When): BenchState {
  return laid(state, withWhen(state.now.batch, index, when));
}

/** A new line at the end, with what it usually is. */
export function addLine(state: BenchState, line: FormulaLine): BenchState {
  const { batch, lineKeys } = state.now;
  return withTable(state, {
    ...state.now,
    batch: { ...batch, formula: [...batch.formula, line] },
    lineKeys: [...lineKeys, nextKey(lineKeys)],
  });
}

/** Takes a line out, and with it what could not be read in it. */
export function removeLine(state: BenchState, index: number): BenchState {
  const { batch, lineKeys } = state.now;
  const gone = lineKeys[index];
  const next = withTable(state, {
    ...state.now,
    batch: { ...batch, formula: batch.formula.filter((_, at) => at !== index) },
    lineKeys: lineKeys.filter((_, at) => at !== index),
  });
  const unread = Object.entries(state.unread).filter(
    ([field]) => gone === undefined || !field.startsWith(`${gone}-`),
  );
  return { ...next, unread: Object.fromEntries(unread) };
}

/** Another target. */
export function setTarget(state: BenchState, target: BatchTarget, field?: string): BenchState {
  return laid(state, withTarget(state.now.batch, target), field);
}

/** The changes of a remedy, as one step. */
export function takeRemedy(state: BenchState, remedy: Pick<Remedy, 'changes'>): BenchState {
  return laid(
    { ...state, unread: {}, round: state.round + 1 },
    applyChanges(state.now.batch, remedy.changes),
  );
}

/** A whole other batch in the place of this one, as one step. */
export function layBeside(state: BenchState, batch: BatchDocument): BenchState {
  return laid({ ...state, unread: {}, round: state.round + 1 }, batch);
}

/** Amounts by weight, or by per cent at a fixed total. */
export function setBasis(
  state: BenchState,
  basis: 'weights' | 'shares',
  plan: PlanDocument,
): BenchState {
  const { batch } = state.now;
  return laid(state, basis === 'shares' ? inShares(batch, plan) : inWeights(batch, plan));
}

/** Takes everything off the table. */
export function clearTable(state: BenchState, empty: BatchDocument): BenchState {
  return withTable(
    { ...state, unread: {}, arrival: undefined, trouble: undefined, round: state.round + 1 },
    { ...state.now, batch: empty, lineKeys: [] },
  );
}

/** What stands in a field and cannot be read; or that it can. */
export function setUnread(
  state: BenchState,
  field: string,
  unread: BenchState['unread'][string] | undefined,
): BenchState {
  const { [field]: before, ...others } = state.unread;
  if (before === undefined && unread === undefined) return state;
  return { ...state, unread: unread === undefined ? others : { ...others, [field]: unread } };
}

function asShareOfFinished(line: FormulaLine, share: number): FormulaLine {
  const { ingredient, when, drySolidsMassFraction, dextroseEquivalent } = line;
  const label = { drySolidsMassFraction, dextroseEquivalent };
  return {
    ingredient,
    ...(when === undefined ? {} : { when }),
    ...given(label),
    shareOfFinished: share,
  };
}

function given<Value extends object>(value: Value): Partial<Value> {
  return Object.fromEntries(
    Object.entries(value).filter(([, held]) => held !== undefined),
  ) as Partial<Value>;
}

function laid(state: BenchState, batch: BatchDocument, field?: string): BenchState {
  if (batch === state.now.batch) return state;
  const lineKeys = freshKeys(batch.formula.length, state.now.lineKeys);
  // Whoever says something about the kitchen is at home in it; a borrowed one stays borrowed.
  const whose =
    state.now.whose === 'nobodys' && !sameKitchen(batch, state.now.batch)
      ? 'mine'
      : state.now.whose;
  return withTable(state, { batch, lineKeys, whose }, field);
}

function sameKitchen(a: BatchDocument, b: BatchDocument): boolean {
  return KITCHEN_PARTS.every((part) => JSON.stringify(a[part]) === JSON.stringify(b[part]));
}
