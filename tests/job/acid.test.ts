import { describe, expect, it } from 'vitest';
import { applyChanges, type BatchDocument, type FormulaLine, planBatch } from 'vitrose';
import { codesOf, cookingOf, drops, kettle, withLine } from './drops.js';
import { planOf } from './plan-of.js';

describe('acid in the boil', () => {
  const citric = (when: FormulaLine['when']): BatchDocument =>
    withLine({ ingredient: 'citric-acid', massG: 3, when });
  const tartar = (alkalinityMmolPerL: number): BatchDocument => ({
    ...drops,
    formula: [
      { ingredient: 'sucrose', massG: 400 },
      { ingredient: 'water', massG: 140 },
      { ingredient: 'cream-of-tartar', massG: 1, when: 'first-boil' },
    ],
    water: { alkalinityMmolPerL },
  });
  const invertedBy = (batch: BatchDocument) => planOf(batch).inversion?.earlyFraction.value ?? 0;

  it('inverts less with cream of tartar the harder the water', () => {
    const fractions = [0, 1, 3, 6, 12].map((alkalinity) => invertedBy(tartar(alkalinity)));
    expect(fractions).toEqual([...fractions].sort((a, b) => b - a));
    expect(new Set(fractions).size).toBe(5);
  });

  it('lowers the glass point, the sooner it goes in the more', () => {
    const times: readonly FormulaLine['when'][] = ['start', { atC: 120 }, { atC: 140 }, 'off-heat'];
    const glass = times.map((when) => planOf(citric(when)).keeping.glassTransitionC.value);
    expect(glass).toEqual([...glass].sort((a, b) => a - b));
    expect((glass[3] ?? 0) - (glass[0] ?? 0)).toBeGreaterThan(20);
  });

  it('leaves more water at the same stop, and is cooked hotter for the same water', () => {
    const water = (batch: BatchDocument) =>
      planOf(batch).composition.baseMoistureMassFraction.value;
    expect(water(citric('first-boil'))).toBeGreaterThan(water(citric('off-heat')));
    const stop = (when: FormulaLine['when']) =>
      planOf({ ...citric(when), cook: { toMoistureMassFraction: 0.025 } }).target.hereC.value;
    expect(stop('first-boil')).toBeGreaterThan(stop('off-heat'));
  });

  it('refuses no batch, because what it inverts is an estimate', () => {
    const asked = { toGlassTransitionC: 50 };
    expect(planBatch({ ...citric('off-heat'), cook: asked }).kind).toBe('plan');
    expect(planBatch({ ...citric('first-boil'), cook: asked }).kind).toBe('plan');
  });

  it.each([{ toSeaLevelC: 148 }, { toMoistureMassFraction: 0.025 }, { toGlassTransitionC: 40 }])(
    'leaves the clock with the stop of the plan, asked for by %j',
    (cook) => {
      const batch = { ...citric('first-boil'), cook };
      const gapK =
        planOf(batch).target.hereC.value - (cookingOf(batch).path.at(-1)?.hereC ?? Number.NaN);
      // A stop a degree away is read as the same on any thermometer.
      expect(Math.abs(gapK)).toBeLessThan(1);
    },
  );

  it('keeps the mass balance: what inversion binds has not boiled off', () => {
    const { chargeG, baseG, boilOffG } = planOf(citric('first-boil')).composition;
    expect(boilOffG.value + baseG.value).toBeCloseTo(chargeG.value, 9);
  });

  it('is told off, and its remedy gives the hardness back', () => {
    const early = citric('first-boil');
    const advice = planOf(early).advice.find(({ code }) => code === 'acid-too-early');
    expect(advice?.severity).toBe('will-fail');
    expect(advice?.numbers.costsK).toBe(planOf(early).inversion?.earlyCostsK);
    const [remedy] = advice?.remedies ?? [];
    expect(remedy?.code).toBe('acid-at-the-end');
    const late = applyChanges(early, remedy?.changes ?? []);
    expect(codesOf(late)).not.toContain('acid-too-early');
    expect(planOf(late).inversion?.earlyCostsK).toBe(0);
    expect(planOf(late).keeping.glassTransitionC.value).toBeCloseTo(
      planOf(citric('off-heat')).keeping.glassTransitionC.value,
      9,
    );
  });

  it('is never told off for cream of tartar, which is meant for the boil', () => {
    expect(codesOf(tartar(0))).not.toContain('acid-too-early');
  });

  it('costs nothing yet when it goes in last, and something once the water is back', () => {
    const { inversion } = planOf(citric('off-heat'));
    expect(inversion?.earlyCostsK).toBe(0);
    expect(inversion?.lateFraction.value).toBeGreaterThan(0);
    expect(inversion?.lateCostsK).toBeGreaterThan(0);
    expect(inversion?.buffer?.lateFraction).toBeLessThan(inversion?.lateFraction.value ?? 0);
  });

  it('is not blamed for what the syrup does by itself, which moves no number of the plan', () => {
    const { inversion, keeping } = planOf(drops);
    expect(inversion?.earlyFraction.value).toBeGreaterThan(0);
    expect(inversion?.earlyFraction.value).toBeLessThan(0.01);
    expect(inversion?.earlyCostsK).toBe(0);
    expect(keeping.glassTransitionC.value).toBe(
      planOf({ ...drops, hob: kettle(8) }).keeping.glassTransitionC.value,
    );
  });

  it('has nothing to invert where no sucrose is', () => {
    const isomalt: BatchDocument = {
      ...drops,
      formula: [
        { ingredient: 'isomalt', massG: 400 },
        { ingredient: 'water', massG: 110 },
      ],
    };
    expect(planOf(isomalt).inversion).toBeUndefined();
    expect(planOf(isomalt).graining.kind).toBe('none');
  });
});

describe('what sugar inverts in, other than acid by the spoon', () => {
  it('is counted wherever it is more than a hand can feel, in honey too', () => {
    const { inversion } = planOf(withLine({ ingredient: 'honey', massG: 30 }));
    const told = inversion?.earlyFraction.value ?? Number.NaN;
    // What is shown and moves no number of the plan is too little to be felt.
    expect(inversion?.earlyCostsK === 0 ? told : 0).toBeLessThan(0.05);
  });
});
