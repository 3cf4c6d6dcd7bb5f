import type { BatchDocument } from 'vitrose';
import type { KitchenDocument } from 'vitrose/documents';
import { withTable } from './history.js';
import { freshKeys } from './line-keys.js';
import type { Manner } from './read/types.js';
import { inKitchen, kitchenOf } from './recipe.js';
import type { BenchState, WhoseKitchen } from './types.js';

/** The bench with a batch on it, before anything was changed. */
export function startWith(batch: BatchDocument, manner: Manner, whose: WhoseKitchen): BenchState {
  return {
    past: [],
    now: { batch, lineKeys: freshKeys(batch.formula.length), whose },
    future: [],
    manner,
    round: 0,
    unread: {},
  };
}

/** A table with nothing on it but the kitchen, and the usual question: hard crack. */
export function emptyTable(kitchen: KitchenDocument | undefined): BatchDocument {
  return inKitchen(
    { format: 'vitrose.batch/1', formula: [], cook: { toStage: 'hard-crack' } },
    kitchen,
  );
}

/**
 * Lays an opened recipe on the table.
 *
 * It is computed in the reader's kitchen. Only a reader who has none sees it in the kitchen it came
 * with, and the page says so.
 */
export function arrive(
  state: BenchState,
  opened: BatchDocument,
  from: 'link' | 'file',
  mine: KitchenDocument | undefined,
): BenchState {
  const theirs = kitchenOf(opened);
  const whose: WhoseKitchen =
    mine !== undefined ? 'mine' : theirs !== undefined ? 'theirs' : 'nobodys';
  const batch = mine !== undefined ? inKitchen(opened, mine) : opened;
  const next = withTable(state, { batch, lineKeys: freshKeys(batch.formula.length), whose });
  return {
    ...next,
    round: state.round + 1,
    unread: {},
    trouble: undefined,
    arrival: {
      from,
      name: opened.name ?? '',
      theirs: mine !== undefined && theirs !== undefined ? opened : undefined,
    },
  };
}

/** The recipe in the kitchen it came with. */
export function inTheirKitchen(state: BenchState): BenchState {
  const theirs = state.arrival?.theirs;
  if (theirs === undefined) return state;
  const lineKeys = freshKeys(theirs.formula.length);
  return {
    ...withTable(state, { batch: theirs, lineKeys, whose: 'theirs' }),
    round: state.round + 1,
    unread: {},
    arrival: {
      ...state.arrival,
      from: state.arrival?.from ?? 'link',
      name: theirs.name ?? '',
      theirs: undefined,
    },
  };
}

/** From now on the kitchen on the table is mine, and kept. */
export function keepAsMine(state: BenchState): BenchState {
  return { ...state, now: { ...state.now, whose: 'mine' } };
}
