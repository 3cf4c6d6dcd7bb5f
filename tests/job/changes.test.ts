import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  acidTime,
  applyChanges,
  type BatchDocument,
  type ChangesOf,
  type FormulaLine,
  swapSyrupForm,
} from 'vitrose';
import { planOf, weighedOf } from './plan-of.js';

const sugarMass = (...formula: readonly FormulaLine[]): BatchDocument => ({
  format: 'vitrose.batch/1',
  formula,
  cook: { toSeaLevelC: 148 },
});
const line = (ingredient: string, massG: number, more: object = {}): FormulaLine => ({
  ingredient,
  massG,
  ...more,
});
const sixty = { massG: 5, count: 60 } as const;

function changed(batch: BatchDocument, answer: ChangesOf): BatchDocument {
  if (answer.kind === 'none') throw new Error(answer.reason);
  return applyChanges(batch, answer.changes);
}

/** Both batches weigh the same water and solids, to what a kitchen scale shows of each line. */
function expectSameWeighed(one: BatchDocument, other: BatchDocument): void {
  const [here, there] = [weighedOf(one), weighedOf(other)];
  expect(Math.abs(there.drySolidsG - here.drySolidsG)).toBeLessThanOrEqual(0.1);
  expect(Math.abs(there.waterG - here.waterG)).toBeLessThanOrEqual(0.15);
}

describe('all of the acid at another time', () => {
  const drops = sugarMass(
    line('sucrose', 240),
    line('citric-acid', 2),
    line('malic-acid', 1, { when: 'off-heat' }),
    line('cream-of-tartar', 0.5),
    line('water', 80),
  );

  it('moves every acid that is not there yet, and cream of tartar never', () => {
    const late = changed(drops, acidTime(drops, 'off-heat'));
    expect(late.formula.map(({ when }) => when ?? 'start')).toEqual([
      'start',
      'off-heat',
      'off-heat',
      'start',
      'start',
    ]);
    expect(acidTime(late, 'off-heat')).toEqual({ kind: 'none', reason: 'already-so' });
  });

  it('goes there and back', () => {
    const early = changed(drops, acidTime(drops, 'first-boil'));
    const late = changed(early, acidTime(early, 'off-heat'));
    expect(changed(late, acidTime(late, 'first-boil'))).toEqual(early);
  });

  it('knows an acid of the cook’s own, and takes no sugar of that name for one', () => {
    const own = (kind: 'acid' | 'sugar'): BatchDocument => ({
      ...sugarMass(line('sucrose', 240), line('sour', 2), line('water', 80)),
      ingredients: { sour: { kind, drySolidsMassFraction: 1, solids: { 'citric-acid': 1 } } },
    });
    expect(acidTime(own('acid'), 'off-heat').kind).toBe('changes');
    expect(acidTime(own('sugar'), 'off-heat')).toEqual({ kind: 'none', reason: 'no-acid' });
  });

  it('has nothing to move without acid, or with cream of tartar alone', () => {
    const none = { kind: 'none', reason: 'no-acid' };
    expect(acidTime(sugarMass(line('sucrose', 240), line('water', 80)), 'off-heat')).toEqual(none);
    const tartar = sugarMass(line('sucrose', 240), line('cream-of-tartar', 0.5));
    expect(acidTime(tartar, 'off-heat')).toEqual(none);
  });
});

describe('dried syrup for liquid, and back', () => {
  const liquid = sugarMass(line('sucrose', 240), line('glucose-syrup', 200), line('water', 80));

  it('keeps the solids and the water of the whole', () => {
    const dried = changed(liquid, swapSyrupForm(liquid, 1));
    expect(dried.formula[1]).toEqual({ ingredient: 'dried-glucose-syrup', massG: 166.7 });
    expect(dried.formula[2]).toEqual({ ingredient: 'water', massG: 113.3 });
    expectSameWeighed(liquid, dried);
    expect(planOf(dried).target.readingC.value).toBeCloseTo(planOf(liquid).target.readingC.value);
  });

  it('comes back to what it was, whatever the weights', () => {
    const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
    fc.assert(
      fc.property(between(50, 2_000), between(0.05, 1), between(0.3, 1), (sugarG, syrup, water) => {
        const batch = sugarMass(
          line('sucrose', sugarG),
          line('glucose-syrup', sugarG * syrup, { dextroseEquivalent: 42 }),
          line('water', sugarG * water),
        );
        const there = changed(batch, swapSyrupForm(batch, 1));
        expectSameWeighed(batch, there);
        const back = changed(there, swapSyrupForm(there, 1));
        expectSameWeighed(batch, back);
        expect(back.formula[1]).toMatchObject({
          ingredient: 'glucose-syrup',
          dextroseEquivalent: 42,
        });
      }),
    );
  });

  it('keeps how far the starch is cut and when it goes in, not the solids of the other label', () => {
    const syrup = { dextroseEquivalent: 60, conversion: 'enzyme', when: 'first-boil' } as const;
    const batch = sugarMass(
      line('sucrose', 240),
      line('glucose-syrup', 200, { ...syrup, drySolidsMassFraction: 0.82, asWritten: 'a jar' }),
      line('water', 80),
    );
    const dried = changed(batch, swapSyrupForm(batch, 1));
    expect(dried.formula[1]).toEqual({
      ingredient: 'dried-glucose-syrup',
      massG: 170.8,
      ...syrup,
    });
    expectSameWeighed(batch, dried);
  });

  it('writes down the water the powder needs where there was none', () => {
    const batch = sugarMass(line('sucrose', 240), line('glucose-syrup', 200));
    const dried = changed(batch, swapSyrupForm(batch, 1));
    expect(dried.formula[2]).toEqual({ ingredient: 'water', massG: 33.3 });
    expectSameWeighed(batch, dried);
  });

  it('turns a spoon measure into grams', () => {
    const batch = sugarMass(
      line('sucrose', 240),
      { ingredient: 'glucose-syrup', measure: { quantity: 1, unit: 'us-cup' } },
      line('water', 80),
    );
    const dried = changed(batch, swapSyrupForm(batch, 1));
    expect(dried.formula[1]).toHaveProperty('massG');
    expectSameWeighed(batch, dried);
  });

  it('takes the water from several lines, the first one whole', () => {
    const batch = sugarMass(
      line('sucrose', 240),
      line('dried-glucose-syrup', 160),
      line('water', 20),
      line('water', 60, { when: 'first-boil' }),
    );
    const syrup = changed(batch, swapSyrupForm(batch, 1));
    expect(syrup.formula.slice(2)).toEqual([line('water', 48, { when: 'first-boil' })]);
    expectSameWeighed(batch, syrup);
  });

  it('is impossible where the recipe has less water than the syrup brings', () => {
    const batch = sugarMass(
      line('sucrose', 240),
      line('dried-glucose-syrup', 160),
      line('water', 31),
    );
    expect(swapSyrupForm(batch, 1)).toEqual({ kind: 'none', reason: 'too-little-water' });
  });

  it.each([
    [0.7, 'thinner than the syrup'],
    [0.8, 'as thin as the syrup'],
    [0.9, 'thicker than the syrup'],
  ])('lets make-up water to %d go with its powder, %s, and keeps the rest', (solids) => {
    const batch = sugarMass(
      line('sucrose', 240),
      line('dried-glucose-syrup', 160),
      line('water', 70),
      {
        ingredient: 'water',
        makeUpWaterFor: { ingredient: 'dried-glucose-syrup', drySolidsMassFraction: solids },
      },
    );
    const syrup = changed(batch, swapSyrupForm(batch, 1));
    expect(syrup.formula.some((one) => 'makeUpWaterFor' in one)).toBe(false);
    expectSameWeighed(batch, syrup);
  });

  it('leaves the make-up water of a second powder alone', () => {
    const batch = sugarMass(
      line('sucrose', 240),
      line('dried-glucose-syrup', 100),
      line('dried-glucose-syrup', 60),
      {
        ingredient: 'water',
        makeUpWaterFor: { ingredient: 'dried-glucose-syrup', drySolidsMassFraction: 0.8 },
      },
      line('water', 100),
    );
    expectSameWeighed(batch, changed(batch, swapSyrupForm(batch, 1)));
  });

  it('leaves what is a share of the syrup with something to be a share of', () => {
    const batch = sugarMass(
      line('sucrose', 240),
      line('glucose-syrup', 200),
      { ingredient: 'salt', shareOfIngredient: { ingredient: 'glucose-syrup', share: 0.01 } },
      line('water', 80),
    );
    const dried = changed(batch, swapSyrupForm(batch, 1));
    const salt = planOf(dried).formula.find(({ ingredient }) => ingredient === 'salt');
    expect(salt?.massG.value).toBeCloseTo(2, 1);
  });

  it('keeps a share of the dry solids as it is and drops its make-up water', () => {
    const batch: BatchDocument = {
      ...sugarMass(
        { ingredient: 'sucrose', shareOfDrySolids: 0.6 },
        {
          ingredient: 'dried-glucose-syrup',
          dextroseEquivalent: 42,
          drySolidsMassFraction: 0.95,
          shareOfDrySolids: 0.4,
        },
        { ingredient: 'water', shareOfIngredient: { ingredient: 'sucrose', share: 0.33 } },
        {
          ingredient: 'water',
          makeUpWaterFor: { ingredient: 'dried-glucose-syrup', drySolidsMassFraction: 0.8 },
        },
      ),
      pieces: sixty,
    };
    const syrup = changed(batch, swapSyrupForm(batch, 1));
    expect(syrup.formula).toHaveLength(3);
    expect(syrup.formula[1]).toEqual({
      ingredient: 'glucose-syrup',
      dextroseEquivalent: 42,
      shareOfDrySolids: 0.4,
    });
    expectSameWeighed(batch, syrup);
  });

  it('keeps the solids of a line said as a share by weight', () => {
    const batch = sugarMass(
      line('sucrose', 240),
      { ingredient: 'glucose-syrup', shareOfIngredient: { ingredient: 'sucrose', share: 0.5 } },
      line('water', 80),
    );
    expectSameWeighed(batch, changed(batch, swapSyrupForm(batch, 1)));
  });

  it('knows starch syrups only, in places that are there, in batches it can read', () => {
    expect(swapSyrupForm(liquid, 0)).toEqual({ kind: 'none', reason: 'not-a-starch-syrup' });
    expect(swapSyrupForm(liquid, 3)).toEqual({ kind: 'none', reason: 'no-such-line' });
    const unread = sugarMass(line('glucose-syrup', 200), line('sukrose', 240));
    expect(swapSyrupForm(unread, 0)).toEqual({ kind: 'none', reason: 'not-readable' });
  });
});
