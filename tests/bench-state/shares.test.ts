import { describe, expect, it } from 'vitest';
import { startWith } from '../../site/src/bench/state/arrive.js';
import { setAmount } from '../../site/src/bench/state/edits.js';
import { inShares, inWeights, isInShares } from '../../site/src/bench/state/shares.js';
import { EXAMPLES, example, planOf } from './examples.js';

const METRIC = { units: 'metric', region: 'world' } as const;

describe('the same batch by per cent', () => {
  it.each(EXAMPLES)('%s weighs what it weighed', (_, batch) => {
    const before = planOf(batch);
    const shared = inShares(batch, before);
    expect(isInShares(shared)).toBe(true);
    const after = planOf(shared);
    expect(after.formula.map(({ ingredient }) => ingredient)).toEqual(
      before.formula.map(({ ingredient }) => ingredient),
    );
    after.formula.forEach(({ massG }, at) => {
      const was = before.formula[at]?.massG.value ?? 0;
      expect(Math.abs(massG.value - was)).toBeLessThan(0.01 * was + 0.01);
    });
    expect(after.target.readingC.value).toBeCloseTo(before.target.readingC.value, 1);
  });

  it.each(EXAMPLES)('%s goes back to weights', (_, batch) => {
    const plan = planOf(batch);
    const weighed = inWeights(inShares(batch, plan), planOf(inShares(batch, plan)));
    expect(isInShares(weighed)).toBe(false);
    const after = planOf(weighed);
    expect(after.target.readingC.value).toBeCloseTo(plan.target.readingC.value, 0);
    const was = plan.yield.finishedG.value;
    expect(Math.abs(after.yield.finishedG.value - was)).toBeLessThan(0.01 * was);
  });
});

describe('a share that is changed', () => {
  it('makes the others give way, so that they add up', () => {
    const state = startWith(example('lemon-drops-by-shares'), METRIC, 'nobodys');
    const after = setAmount(state, 0, { kind: 'share', share: 0.55 }, undefined).now.batch;
    expect(after.formula[0]).toMatchObject({ shareOfDrySolids: 0.55 });
    expect(after.formula[1]).toMatchObject({ shareOfDrySolids: 0.45 });
    expect(after.formula[6]).toEqual(state.now.batch.formula[6]);
    expect(planOf(after).yield.finishedG.value).toBeCloseTo(
      planOf(state.now.batch).yield.finishedG.value,
      6,
    );
  });

  it('among weights keeps the dry solids', () => {
    const batch = example('harbour');
    const plan = planOf(batch);
    const state = startWith(batch, METRIC, 'nobodys');
    const after = planOf(setAmount(state, 0, { kind: 'share', share: 0.5 }, plan).now.batch);
    const early = (of: typeof plan): number =>
      of.formula
        .filter(({ when }) => when === 'start')
        .reduce((sum, { drySolidsG }) => sum + drySolidsG, 0);
    expect(after.formula[0]?.drySolidsG).toBeCloseTo(early(plan) / 2, 0);
    expect(Math.abs(early(after) - early(plan))).toBeLessThan(1);
    expect(after.formula[2]?.massG.value).toBe(116);
  });

  it('of a late line is a share of the sweets', () => {
    const batch = example('harbour');
    const state = startWith(batch, METRIC, 'nobodys');
    const after = setAmount(state, 3, { kind: 'share', share: 0.01 }, planOf(batch)).now.batch;
    expect(after.formula[3]).toEqual({
      ingredient: 'citric-acid',
      when: 'off-heat',
      shareOfFinished: 0.01,
    });
    const plan = planOf(after);
    const share = (plan.formula[3]?.massG.value ?? 0) / plan.yield.finishedG.value;
    expect(share).toBeCloseTo(0.01, 6);
  });
});
