import { describe, expect, it } from 'vitest';
import { applyChanges, type BatchDocument, type FormulaLine, withoutXylitol } from 'vitrose';
import { planOf, weighedOf } from './plan-of.js';

const polyolMass = (...formula: readonly FormulaLine[]): BatchDocument => ({
  format: 'vitrose.batch/1',
  formula,
  cook: { toMoistureMassFraction: 0.01 },
});
const line = (ingredient: string, massG: number, more: object = {}): FormulaLine => ({
  ingredient,
  massG,
  ...more,
});
const sixty = { massG: 5, count: 60 } as const;

describe('without xylitol', () => {
  /** Nothing of it is left, dry gram stands for dry gram, and no caution for dogs is needed. */
  function expectIsomaltOnly(batch: BatchDocument): BatchDocument {
    const answer = withoutXylitol(batch);
    if (answer.kind === 'none') throw new Error(answer.reason);
    const instead = applyChanges(batch, answer.changes);
    expect(JSON.stringify(instead)).not.toContain('xylitol');
    const plan = planOf(instead);
    expect(plan.composition.drySolidsShares).not.toHaveProperty('xylitol');
    expect(plan.cautions.map(({ id }) => id)).not.toContain('dogs-xylitol');
    expect(Math.abs(weighedOf(instead).drySolidsG - weighedOf(batch).drySolidsG)).toBeLessThan(0.2);
    expect(plan.keeping.glassTransitionC.value).toBeGreaterThan(
      planOf(batch).keeping.glassTransitionC.value,
    );
    return instead;
  }

  it('gives its grams to the isomalt that is there, crystal water added', () => {
    const batch = polyolMass(line('isomalt', 90), line('xylitol', 10), line('water', 30));
    expect(expectIsomaltOnly(batch).formula).toEqual([line('isomalt', 100.5), line('water', 30)]);
  });

  it('needs no crystal water for dry isomalt', () => {
    const batch = polyolMass(line('isomalt-dry', 90), line('xylitol', 10), line('water', 30));
    expect(expectIsomaltOnly(batch).formula[0]).toEqual(line('isomalt-dry', 100));
  });

  it('becomes a line of isomalt where there was none', () => {
    const batch = polyolMass(line('maltitol', 90), line('xylitol', 10), line('water', 30));
    expect(expectIsomaltOnly(batch).formula[1]).toEqual(line('isomalt', 10.5));
  });

  it('counts every line of it', () => {
    expectIsomaltOnly(
      polyolMass(line('xylitol', 10), line('isomalt', 90), line('water', 30), line('xylitol', 5)),
    );
  });

  it('keeps its own time off the heat', () => {
    const late = line('xylitol', 10, { when: 'off-heat' });
    const batch = polyolMass(line('isomalt', 90), late, line('water', 30));
    expect(expectIsomaltOnly(batch).formula[1]).toEqual({
      ingredient: 'isomalt',
      massG: 10.5,
      when: 'off-heat',
    });
  });

  it('turns a spoon of it into grams and drops the words of that spoon', () => {
    const batch = polyolMass(
      line('isomalt', 90),
      {
        ingredient: 'xylitol',
        measure: { quantity: 2, unit: 'us-tablespoon' },
        asWritten: '2 tbsp',
      },
      line('water', 30),
    );
    const instead = expectIsomaltOnly(batch).formula[1];
    expect(Object.keys(instead ?? {}).sort()).toEqual(['ingredient', 'massG']);
  });

  it('adds shares of dry solids', () => {
    const batch: BatchDocument = {
      ...polyolMass(
        { ingredient: 'isomalt', shareOfDrySolids: 0.9 },
        { ingredient: 'xylitol', shareOfDrySolids: 0.1 },
        { ingredient: 'water', shareOfIngredient: { ingredient: 'isomalt', share: 0.3 } },
      ),
      pieces: sixty,
    };
    expect(expectIsomaltOnly(batch).formula[0]).toEqual({
      ingredient: 'isomalt',
      shareOfDrySolids: 1,
    });
  });

  it('leaves what was a share of it with the same weight', () => {
    const batch = polyolMass(line('isomalt', 90), line('xylitol', 10), {
      ingredient: 'water',
      shareOfIngredient: { ingredient: 'xylitol', share: 3 },
    });
    const water = planOf(expectIsomaltOnly(batch)).formula.at(-1);
    expect(water?.massG.value).toBeCloseTo(30, 0);
  });

  it('has nothing to do without it, and does not guess at what it cannot read', () => {
    const plain = polyolMass(line('isomalt', 90), line('water', 30));
    expect(withoutXylitol(plain)).toEqual({ kind: 'none', reason: 'no-xylitol' });
    const unread = polyolMass(line('xylitol', 10), line('isomolt', 90));
    expect(withoutXylitol(unread)).toEqual({ kind: 'none', reason: 'not-readable' });
  });
});
