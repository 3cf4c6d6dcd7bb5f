import type { BenchState, Table } from './types.js';

/** As many steps back as anyone goes; the documents are small. */
const MOST_STEPS = 200;

/**
 * Lays a new table over the present one.
 *
 * @param field - Where it was changed. Changes of the same field one after another are one step,
 *   so that undo takes back a number and not its last digit; without a field each is its own.
 */
export function withTable(state: BenchState, now: Table, field?: string): BenchState {
  const goesOn = field !== undefined && field === state.lastField;
  const past = goesOn ? state.past : [...state.past, state.now].slice(-MOST_STEPS);
  return { ...state, past, now, future: [], lastField: field };
}

/** One step back. What could not be read is the first thing to go. */
export function undo(state: BenchState): BenchState {
  if (Object.keys(state.unread).length > 0) {
    return { ...state, unread: {}, round: state.round + 1 };
  }
  const now = state.past.at(-1);
  if (now === undefined) return state;
  return {
    ...state,
    past: state.past.slice(0, -1),
    now,
    future: [state.now, ...state.future],
    lastField: undefined,
    unread: {},
    round: state.round + 1,
  };
}

/** One step forward again. */
export function redo(state: BenchState): BenchState {
  const [now, ...future] = state.future;
  if (now === undefined) return state;
  return {
    ...state,
    past: [...state.past, state.now],
    now,
    future,
    lastField: undefined,
    unread: {},
    round: state.round + 1,
  };
}
