import { describe, expect, it } from 'vitest';
import { type BatchDocument, planBatch } from 'vitrose';
import { withAir } from '../../site/src/bench/state/air.js';
import { startWith } from '../../site/src/bench/state/arrive.js';
import {
  addLine,
  removeLine,
  setAmount,
  setIngredient,
  setTarget,
  setUnread,
  setValue,
  setWhen,
  takeRemedy,
} from '../../site/src/bench/state/edits.js';
import { redo, undo } from '../../site/src/bench/state/history.js';
import { valueAt, withValue } from '../../site/src/bench/state/place.js';
import {
  TARGET_KINDS,
  targetKindOf,
  targetOfKind,
  withTarget,
} from '../../site/src/bench/state/target.js';
import type { BenchState } from '../../site/src/bench/state/types.js';
import { EXAMPLES, example, planOf } from './examples.js';

const METRIC = { units: 'metric', region: 'world' } as const;
const start = (batch = example('harbour')): BenchState => startWith(batch, METRIC, 'nobodys');

describe('a change', () => {
  it('makes a new document and leaves the old one as it was', () => {
    const before = start();
    const frozen = JSON.stringify(before);
    const after = setValue(before, '/cook/toSeaLevelC', 150);
    expect(after.now.batch.cook).toEqual({ toSeaLevelC: 150 });
    expect(JSON.stringify(before)).toBe(frozen);
  });

  it('touches only the groups on its way', () => {
    const { batch } = start().now;
    const after = withValue(batch, '/room/temperatureC', 30);
    expect(after.formula).toBe(batch.formula);
    expect(after.pan).toBe(batch.pan);
    expect(Object.keys(after)).toEqual(Object.keys(batch));
  });

  it('takes out a field, and its group with the last of them', () => {
    const { batch } = start().now;
    const bare = withValue(
      withValue(batch, '/room/temperatureC', undefined),
      '/room/relativeHumidity',
      undefined,
    );
    expect('room' in bare).toBe(false);
    expect(valueAt(bare, '/room/temperatureC')).toBeUndefined();
    expect(valueAt(bare, '/constructor/name')).toBeUndefined();
  });
});

describe('undo and redo', () => {
  it('walk the same steps back and forth', () => {
    const states = [start()];
    for (const edit of [
      (state: BenchState) => setValue(state, '/cook/toSeaLevelC', 150),
      (state: BenchState) => setWhen(state, 3, 'start'),
      (state: BenchState) => addLine(state, { ingredient: 'salt', massG: 1 }),
      (state: BenchState) => removeLine(state, 0),
    ]) {
      states.push(edit(states.at(-1) as BenchState));
    }
    let state = states.at(-1) as BenchState;
    for (const before of states.slice(0, -1).reverse()) {
      state = undo(state);
      expect(state.now).toBe(before.now);
    }
    expect(undo(state)).toBe(state);
    for (const after of states.slice(1)) {
      state = redo(state);
      expect(state.now).toBe(after.now);
    }
    expect(redo(state)).toBe(state);
  });

  it('take typing in one field as one step, and two fields as two', () => {
    let state = start();
    for (const value of [1, 14, 149]) state = setValue(state, '/cook/toSeaLevelC', value);
    state = setValue(state, '/room/temperatureC', 30);
    expect(state.past).toHaveLength(2);
    state = undo(undo(state));
    expect(state.now.batch.cook).toEqual({ toSeaLevelC: 148 });
  });

  it('first put back what could not be read', () => {
    const wrong = setUnread(start(), 'f-printed', { text: 'hot', reason: 'Not a number.' });
    const back = undo(wrong);
    expect(back.unread).toEqual({});
    expect(back.now).toBe(wrong.now);
    expect(back.round).toBe(wrong.round + 1);
  });

  it('forget the future once something else is done', () => {
    const back = undo(setValue(start(), '/cook/toSeaLevelC', 150));
    expect(setWhen(back, 3, 'start').future).toEqual([]);
  });
});

describe('the lines of the formula', () => {
  it('keep their keys when others come and go', () => {
    const three = removeLine(start(), 1);
    expect(three.now.lineKeys).toEqual(['l1', 'l3', 'l4']);
    const four = addLine(three, { ingredient: 'salt', massG: 1 });
    expect(four.now.lineKeys).toEqual(['l1', 'l3', 'l4', 'l5']);
    expect(new Set(four.now.lineKeys).size).toBe(4);
  });

  it('lose what could not be read in them when they go', () => {
    const wrong = setUnread(start(), 'l2-amount', { text: '?', reason: 'No.' });
    expect(removeLine(wrong, 1).unread).toEqual({});
    expect(removeLine(wrong, 0).unread).toHaveProperty('l2-amount');
  });

  it('take another amount and keep the rest', () => {
    const { plan } = { plan: planOf(example('harbour')) };
    const state = setAmount(start(), 1, { kind: 'mass', massG: 140 }, plan);
    expect(state.now.batch.formula[1]).toEqual({
      ingredient: 'dried-glucose-syrup',
      dextroseEquivalent: 42,
      drySolidsMassFraction: 0.96,
      massG: 140,
    });
    const spoons = setAmount(
      start(),
      3,
      { kind: 'measure', quantity: 1, unit: 'us-teaspoon', written: '1 tsp' },
      plan,
    );
    expect(spoons.now.batch.formula[3]).toEqual({
      ingredient: 'citric-acid',
      when: 'off-heat',
      measure: { quantity: 1, unit: 'us-teaspoon' },
      asWritten: '1 tsp',
    });
  });

  it('lose what the label of the old ingredient said', () => {
    const state = setIngredient(start(), 1, 'glucose-syrup');
    expect(state.now.batch.formula[1]).toEqual({ ingredient: 'glucose-syrup', massG: 155 });
  });
});

describe('a remedy', () => {
  it.each(EXAMPLES)('of %s is one step, and undo takes it back', (_, batch) => {
    const { advice } = planOf(batch);
    for (const remedy of advice.flatMap(({ remedies }) => remedies)) {
      const state = takeRemedy(start(batch), remedy);
      expect(state.past).toHaveLength(1);
      expect(state.now.lineKeys).toHaveLength(state.now.batch.formula.length);
      expect(undo(state).now.batch).toBe(batch);
    }
  });
});

describe('the target', () => {
  it.each(EXAMPLES)('of %s can be said in four ways without changing the sweet', (_, batch) => {
    const plan = planOf(batch);
    for (const kind of TARGET_KINDS) {
      const other = withTarget(batch, targetOfKind(kind, plan));
      expect(targetKindOf(other)).toBe(kind);
      if (kind === 'stage') continue;
      const result = planBatch(other);
      // Hardness past the knee is refused with a way out; everything else is the same stop.
      if (result.kind === 'refused') continue;
      const shiftC = result.plan.target.seaLevelC.value - plan.target.seaLevelC.value;
      expect(Math.abs(shiftC)).toBeLessThan(kind === 'printed' ? 0.51 : 4);
    }
  });

  it('keeps what a gauge shows', () => {
    const { batch } = start().now;
    const vacuum = { ...batch, cook: { ...batch.cook, underVacuumPa: 50_000 } };
    expect(withTarget(vacuum, { toStage: 'hard-crack' }).cook).toEqual({
      toStage: 'hard-crack',
      underVacuumPa: 50_000,
    });
    expect(setTarget(start(vacuum), { toSeaLevelC: 140 }).now.batch.cook.underVacuumPa).toBe(
      50_000,
    );
  });
});

describe('what is known about the air', () => {
  const at = (kitchen: BatchDocument['kitchen']): BatchDocument => ({
    ...example('harbour'),
    kitchen,
  });

  it('is one thing at a time', () => {
    expect(withAir(at({ elevationM: 1500 }), 'barometer', 85_000).kitchen).toEqual({
      pressurePa: 85_000,
    });
    expect(withAir(at({ pressurePa: 85_000 }), 'altitude', 300).kitchen).toEqual({
      elevationM: 300,
    });
    expect(withAir(at({ elevationM: 1500 }), 'trusted', 95).kitchen).toEqual({ waterBoilsAtC: 95 });
    expect('kitchen' in withAir(at({ elevationM: 1500 }), 'altitude', undefined)).toBe(false);
  });

  it('lets the weather app keep the altitude, whichever comes first', () => {
    const both = { seaLevelPressurePa: 101_900, elevationM: 1500 };
    expect(withAir(at({ elevationM: 1500 }), 'weather', 101_900).kitchen).toEqual(both);
    const first = withAir(at(undefined), 'weather', 101_900);
    expect(withAir(first, 'altitude', 1500).kitchen).toEqual(both);
    expect(withAir(at(both), 'weather', undefined).kitchen).toEqual({ elevationM: 1500 });
  });
});
