import { describe, expect, it } from 'vitest';
import { applyChanges, type BatchDocument, type Hob, type MomentId } from 'vitrose';
import { codesOf, cookingOf, drops, kettle, withLine } from './drops.js';
import { planOf } from './plan-of.js';

describe('the boil against the clock', () => {
  it.each([
    ['gas', { kind: 'gas', powerW: 3_000 }],
    ['resistance', { kind: 'resistance', powerW: 1_500 }],
    ['induction', { kind: 'induction', powerW: 1_800 }],
    ['timed', kettle(4)],
  ] as const)('is told for a hob of kind %s', (kind, hob) => {
    const cooking = cookingOf({ ...drops, hob });
    expect(cooking.hob).toBe(kind);
    expect(cooking.hobIsAssumed).toBe(false);
    expect(cooking.firstBoilMin.value).toBeGreaterThan(0);
    expect(cooking.toStopMin.value).toBeGreaterThan(cooking.firstBoilMin.value);
    const { value, band } = cooking.toStopMin;
    expect(band[0]).toBeLessThan(value);
    expect(band[1]).toBeGreaterThan(value);
  });

  it('stands on a usual kettle test where nobody says which hob, with a band as wide as hobs are', () => {
    const guessed = cookingOf(drops);
    const told = cookingOf({ ...drops, hob: kettle(4) });
    expect(guessed.hobIsAssumed).toBe(true);
    expect(guessed.toStopMin.value).toBe(told.toStopMin.value);
    expect(guessed.toStopMin.band[0]).toBeCloseTo(told.toStopMin.band[0] / 2, 9);
    expect(guessed.toStopMin.band[1]).toBeCloseTo(told.toStopMin.band[1] * 2, 9);
    expect(planOf(drops).defaults.map(({ path }) => path)).toContain('/hob');
  });

  it('takes fewer minutes the sooner the kettle boils', () => {
    const minutes = [8, 4, 2].map(
      (min) => cookingOf({ ...drops, hob: kettle(min) }).toStopMin.value,
    );
    expect(minutes).toEqual([...minutes].sort((a, b) => b - a));
    expect(new Set(minutes).size).toBe(3);
  });

  it('turns the flame down where the end climbs faster than a hand can catch', () => {
    const { turnDownToFraction, rateAtStopKPerMin } = cookingOf({ ...drops, hob: kettle(4) });
    // Five kelvin a minute is as fast as a hand can catch.
    expect(rateAtStopKPerMin.value).toBeGreaterThan(5);
    expect(turnDownToFraction).toBeGreaterThan(0);
    expect(turnDownToFraction).toBeLessThan(0.8);
  });

  it('leaves a gentle flame as it is', () => {
    const gentle: BatchDocument = { ...drops, hob: kettle(30) };
    expect(cookingOf(gentle).turnDownToFraction).toBe(1);
    expect(planOf(gentle).steps.map(({ id }) => id)).not.toContain('turn-down');
    expect(cookingOf(gentle).moments.map(({ id }) => id)).not.toContain('turn-down');
  });

  it('turns a flame down further for a slow thermometer, so that it can be read', () => {
    const share = (readsInS: number) =>
      cookingOf({ ...drops, hob: kettle(4), thermometer: { readsInS } }).turnDownToFraction;
    expect(share(90)).toBeLessThan(share(4));
    const { lagK, lagTurnedDownK } = cookingOf({
      ...drops,
      hob: kettle(4),
      thermometer: { readsInS: 90 },
    });
    expect(lagTurnedDownK).toBeLessThan(lagK?.value ?? 0);
  });

  it('says what the base of the pan still gives only where its weight is known', () => {
    expect(cookingOf(drops).carryOverK).toBeUndefined();
    const carry = (emptyMassG: number) =>
      cookingOf({ ...drops, pan: { emptyMassG } }).carryOverK?.value ?? 0;
    expect(carry(1_500)).toBeGreaterThan(carry(500));
    expect(carry(500)).toBeGreaterThan(0);
  });

  it('runs from the cold pan to the stop, warmer and drier at every point', () => {
    const { path, toStopMin } = cookingOf(drops);
    const plan = planOf(drops);
    const last = path.at(-1);
    expect(path[0]).toMatchObject({ minutes: 0, hereC: 20 });
    expect(last?.minutes).toBe(toStopMin.value);
    expect(last?.hereC).toBeCloseTo(plan.target.hereC.value, 6);
    expect(last?.drySolidsMassFraction).toBeCloseTo(
      plan.composition.baseDrySolidsMassFraction.value,
      9,
    );
    for (const [at, point] of path.entries()) {
      const before = path[at - 1];
      if (before === undefined) continue;
      expect(point.minutes).toBeGreaterThan(before.minutes);
      expect(point.hereC).toBeGreaterThan(before.hereC);
      expect(point.drySolidsMassFraction).toBeGreaterThanOrEqual(before.drySolidsMassFraction);
    }
  });

  it('weighs more on the colour the longer it takes', () => {
    const load = (min: number) => cookingOf({ ...drops, hob: kettle(min) }).thermalLoadMin.value;
    expect(load(8)).toBeGreaterThan(load(4));
    expect(load(4)).toBeGreaterThan(load(2));
  });
});

describe('a hob that never gets there', () => {
  const dead: BatchDocument = { ...drops, hob: { kind: 'gas', powerW: 0 } };

  it('leaves the clock out, says that it will fail, and plans the rest', () => {
    const plan = planOf(dead);
    expect(plan.cooking).toBeUndefined();
    expect(plan.inversion).toBeUndefined();
    expect(plan.advice.find(({ code }) => code === 'never-boils')?.severity).toBe('will-fail');
    expect(plan.target).toEqual(planOf(drops).target);
  });

  it('gets there with the hob that is offered instead', () => {
    const advice = planOf(dead).advice.find(({ code }) => code === 'never-boils');
    const [remedy] = advice?.remedies ?? [];
    expect(remedy?.code).toBe('stronger-hob');
    const mended = applyChanges(dead, remedy?.changes ?? []);
    expect(planOf(mended).cooking).toBeDefined();
    expect(codesOf(mended)).not.toContain('never-boils');
  });

  it('is one whose pan loses as much as it is given, too', () => {
    const weak: Hob = { kind: 'resistance', powerW: 60 };
    expect(codesOf({ ...drops, hob: weak, pan: { diameterMm: 180 } })).toContain('never-boils');
  });
});

describe('the moments of a cook', () => {
  const sour: BatchDocument = {
    ...withLine({ ingredient: 'citric-acid', massG: 4, when: 'off-heat' }),
    hob: kettle(4),
  };
  const flavoured: BatchDocument = {
    ...sour,
    formula: [...sour.formula, { ingredient: 'flavour-oil', massG: 1, when: 'off-heat' }],
  };

  it.each([
    [
      'plain drops',
      { ...drops, hob: kettle(4) },
      ['first-boil', 'turn-down', 'stop', 'rest', 'pour'],
    ],
    ['sour drops', sour, ['first-boil', 'turn-down', 'stop', 'rest', 'acid', 'pour']],
    [
      'sour drops with flavour',
      flavoured,
      ['first-boil', 'turn-down', 'stop', 'rest', 'colour-and-flavour', 'acid', 'pour'],
    ],
  ] as const)(
    'of %s come in their one order, the clock never running back',
    (_name, batch, ids) => {
      const { moments } = cookingOf(batch);
      expect(moments.map(({ id }) => id)).toEqual(ids);
      const minutes = moments.map(({ atMin }) => atMin.value);
      expect(minutes).toEqual([...minutes].sort((a, b) => a - b));
    },
  );

  it('cool the mass from the stop on, down to what each addition and the pour ask for', () => {
    const { moments } = cookingOf(flavoured);
    const { pour } = planOf(flavoured);
    const at = (id: MomentId) => moments.find((moment) => moment.id === id)?.hereC ?? Number.NaN;
    const afterStop = moments.slice(moments.findIndex(({ id }) => id === 'stop'));
    const falling = afterStop.map(({ hereC }) => hereC);
    expect(falling).toEqual([...falling].sort((a, b) => b - a));
    expect(at('colour-and-flavour')).toBeLessThanOrEqual(pour.flavourBelowC + 1e-9);
    expect(at('acid')).toBeLessThanOrEqual(pour.acidBetweenC[1] + 1e-9);
    expect(at('pour')).toBeLessThanOrEqual(pour.pourBetweenC[1] + 1e-9);
  });

  it('turn the flame down in the step where the clock does', () => {
    const { moments } = cookingOf(sour);
    const step = planOf(sour).steps.find(({ id }) => id === 'turn-down');
    const moment = moments.find(({ id }) => id === 'turn-down');
    expect(moment?.readingC).toBeCloseTo(step?.numbers.readingC ?? Number.NaN, 6);
  });

  it('leave fewer fillings of a bigger mould before the mass no longer pours', () => {
    const inTime = (cavities: number) =>
      planOf({ ...sour, mould: { cavities } }).pour.poursInTime ?? Number.NaN;
    expect(inTime(60)).toBeLessThan(inTime(6));
    expect(planOf(sour).pour.poursInTime).toBeUndefined();
    expect(planOf(sour).pour.potLifeMin?.value).toBeGreaterThan(0);
  });
});
