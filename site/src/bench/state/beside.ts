import {
  acidTime,
  applyChanges,
  type BatchDocument,
  type ChangesOf,
  swapSyrupForm,
  withoutXylitol,
} from 'vitrose';
import type { BenchState } from './types.js';

/** What kinds of plan can be laid beside the one on the table. */
export type BesideKind =
  | 'before'
  | 'acid-first'
  | 'acid-last'
  | 'without-xylitol'
  | 'dried'
  | 'liquid'
  | 'sea-level'
  | 'mountain';

/** One other batch, and whether it can take the place of this one. */
export type Beside = {
  /** The kind, and the line where there are several of the kind. */
  readonly id: string;
  readonly kind: BesideKind;
  /** Which line it changes, from 1; only where more than one could be meant. */
  readonly line?: number | undefined;
  readonly batch: BatchDocument;
  /** A recipe can be made so; a kitchen cannot be moved. */
  readonly takes: boolean;
};

/** A kitchen high up, m. */
const MOUNTAIN_M = 1_500;

/** Everything that can be laid beside this batch now, in the order it is offered. */
export function besides(state: Pick<BenchState, 'now' | 'past'>): readonly Beside[] {
  const { batch } = state.now;
  return [
    ...lastChange(state),
    ...changed(batch, 'acid-first', acidTime(batch, 'first-boil')),
    ...changed(batch, 'acid-last', acidTime(batch, 'off-heat')),
    ...changed(batch, 'without-xylitol', withoutXylitol(batch)),
    ...swaps(batch, 'glucose-syrup', 'dried'),
    ...swaps(batch, 'dried-glucose-syrup', 'liquid'),
    ...moved(batch, 'sea-level', 0),
    ...moved(batch, 'mountain', MOUNTAIN_M),
  ];
}

/** The table as it stood before the last change, where a plan can have stood on it. */
function lastChange({ now, past }: Pick<BenchState, 'now' | 'past'>): readonly Beside[] {
  const before = past.at(-1)?.batch;
  if (before === undefined || before.formula.length === 0 || isSame(before, now.batch)) return [];
  return [{ id: 'before', kind: 'before', batch: before, takes: true }];
}

function changed(
  batch: BatchDocument,
  kind: BesideKind,
  answer: ChangesOf,
  line?: number,
): readonly Beside[] {
  if (answer.kind === 'none') return [];
  const id = line === undefined ? kind : `${kind}-${line}`;
  return [{ id, kind, line, batch: applyChanges(batch, answer.changes), takes: true }];
}

/** Each syrup of this form in the other form. */
function swaps(
  batch: BatchDocument,
  from: 'glucose-syrup' | 'dried-glucose-syrup',
  kind: 'dried' | 'liquid',
): readonly Beside[] {
  const places = batch.formula.flatMap(({ ingredient }, at) => (ingredient === from ? [at] : []));
  return places.flatMap((at) =>
    changed(batch, kind, swapSyrupForm(batch, at), places.length > 1 ? at + 1 : undefined),
  );
}

/** The same batch at another height, with a thermometer that is right; nothing where it stands there. */
function moved(batch: BatchDocument, kind: BesideKind, elevationM: number): readonly Beside[] {
  const { boilingWaterReadingC: boil, iceWaterReadingC: ice, ...rest } = batch.thermometer ?? {};
  const { kitchen } = batch;
  const reads = boil !== undefined || ice !== undefined;
  // Whoever says nothing of the kitchen is planned for by the sea.
  if (!reads && isSame(kitchen ?? { elevationM: 0 }, { elevationM })) return [];
  const { thermometer: _before, ...others } = batch;
  const there = { ...others, kitchen: { elevationM } };
  const kept = Object.keys(rest).length === 0 ? there : { ...there, thermometer: rest };
  return [{ id: kind, kind, batch: kept, takes: false }];
}

function isSame(one: object, other: object): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
