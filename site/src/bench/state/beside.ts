import {
  acidTime,
  applyChanges,
  type BatchDocument,
  type ChangesOf,
  swapSyrupForm,
  withoutXylitol,
} from 'vitrose';
import type { BenchState } from './types.js';

/** What can be laid beside the plan on the table. */
export type BesideId =
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
  readonly id: BesideId;
  readonly batch: BatchDocument;
  /** A recipe can be made so; a kitchen cannot be moved. */
  readonly takes: boolean;
};

/** A kitchen high up, m. */
const MOUNTAIN_M = 1_500;

/** Everything that can be laid beside this batch now, in the order it is offered. */
export function besides(state: Pick<BenchState, 'now' | 'past'>): readonly Beside[] {
  const { batch } = state.now;
  const before = state.past.at(-1)?.batch;
  const changed = (id: BesideId, answer: ChangesOf): readonly Beside[] =>
    answer.kind === 'none' ? [] : [{ id, batch: applyChanges(batch, answer.changes), takes: true }];
  const syrup = (ingredient: string): number =>
    batch.formula.findIndex((line) => line.ingredient === ingredient);
  return [
    ...(before === undefined || before === batch
      ? []
      : [{ id: 'before' as const, batch: before, takes: true }]),
    ...changed('acid-first', acidTime(batch, 'first-boil')),
    ...changed('acid-last', acidTime(batch, 'off-heat')),
    ...changed('without-xylitol', withoutXylitol(batch)),
    ...changed('dried', swapSyrupForm(batch, syrup('glucose-syrup'))),
    ...changed('liquid', swapSyrupForm(batch, syrup('dried-glucose-syrup'))),
    { id: 'sea-level', batch: inKitchen(batch, 0), takes: false },
    { id: 'mountain', batch: inKitchen(batch, MOUNTAIN_M), takes: false },
  ];
}

/** The same batch at another height, with a thermometer that is right. */
function inKitchen(batch: BatchDocument, elevationM: number): BatchDocument {
  const { boilingWaterReadingC: _boil, iceWaterReadingC: _ice, ...rest } = batch.thermometer ?? {};
  return { ...batch, kitchen: { elevationM }, thermometer: rest };
}
