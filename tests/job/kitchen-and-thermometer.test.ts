import { describe, expect, it } from 'vitest';
import { type BatchDocument, type PlanDocument, planBatch } from 'vitrose';

const drops: BatchDocument = {
  format: 'vitrose.batch/1',
  formula: [
    { ingredient: 'sucrose', massG: 232 },
    {
      ingredient: 'dried-glucose-syrup',
      dextroseEquivalent: 42,
      drySolidsMassFraction: 0.96,
      massG: 155,
    },
    { ingredient: 'water', massG: 116 },
    { ingredient: 'citric-acid', massG: 5, when: 'off-heat' },
  ],
  cook: { toSeaLevelC: 148 },
};

function planOf(batch: Partial<BatchDocument>): PlanDocument {
  const result = planBatch({ ...drops, ...batch });
  if (result.kind === 'refused') throw new Error(JSON.stringify(result.problems));
  return result.plan;
}

const stopOf = (batch: Partial<BatchDocument>) => planOf(batch).target.readingC.value;
const boil = (boilingWaterReadingC: number, iceWaterReadingC?: number) =>
  iceWaterReadingC === undefined
    ? { boilingWaterReadingC }
    : { boilingWaterReadingC, iceWaterReadingC };

describe('a recipe printed 148 °C, cooked at 1 500 m, with a thermometer that reads 95.8 in boiling water', () => {
  it('stops at 143.0 if the reading is taken as this kitchen’s boiling point', () => {
    expect(stopOf({ thermometer: boil(95.8) })).toBeCloseTo(143.0, 1);
  });

  it('stops at 142.9 if the altitude is trusted and the thermometer is shifted', () => {
    expect(stopOf({ kitchen: { elevationM: 1500 }, thermometer: boil(95.8) })).toBeCloseTo(
      142.9,
      1,
    );
  });

  it('stops at 143.3 if ice says the scale is stretched', () => {
    expect(stopOf({ kitchen: { elevationM: 1500 }, thermometer: boil(95.8, 0) })).toBeCloseTo(
      143.3,
      1,
    );
  });

  it('stops at 142.1 with a thermometer that was never tried, the wrong answer here', () => {
    expect(stopOf({ kitchen: { elevationM: 1500 } })).toBeCloseTo(142.1, 1);
  });

  it('never counts the offset twice', () => {
    for (const kitchen of [undefined, { elevationM: 1500 }, { waterBoilsAtC: 94.98 }]) {
      const stop = stopOf({ kitchen, thermometer: boil(95.8) });
      expect(Math.round(stop * 10) / 10).toBeGreaterThanOrEqual(142.9);
      expect(Math.round(stop * 10) / 10).toBeLessThanOrEqual(143.3);
    }
  });

  it('says how little the cause matters: about one degree at 96, about three at 90', () => {
    expect(Math.round(planOf({ thermometer: boil(96) }).kitchen.causeMattersK ?? 0)).toBe(1);
    expect(Math.round(planOf({ thermometer: boil(90) }).kitchen.causeMattersK ?? 0)).toBe(3);
  });

  it('asks for the altitude at 90 and not at 96', () => {
    const codes = (reading: number) =>
      planOf({ thermometer: boil(reading) }).advice.map(({ code }) => code);
    expect(codes(90)).toContain('altitude-would-help');
    expect(codes(96)).not.toContain('altitude-would-help');
  });
});

describe('whose error a difference is', () => {
  it('is thermometer and weather together when the altitude is known', () => {
    const { kitchen } = planOf({ kitchen: { elevationM: 1500 }, thermometer: boil(97) });
    expect(kitchen.differenceIsTheThermometers).toBe(false);
    expect(kitchen.readingDifferenceK?.value).toBeCloseTo(2.02, 2);
  });

  it('is the thermometer’s own when a trusted one vouches for the water', () => {
    const plan = planOf({ kitchen: { waterBoilsAtC: 95 }, thermometer: boil(97) });
    expect(plan.kitchen.differenceIsTheThermometers).toBe(true);
    expect(plan.kitchen.readingDifferenceK?.value).toBeCloseTo(2, 6);
    expect(plan.target.readingC.value - plan.target.hereC.value).toBeCloseTo(2, 6);
  });

  it('is a problem that names both when they lie more than five degrees apart', () => {
    const result = planBatch({
      ...drops,
      kitchen: { waterBoilsAtC: 95 },
      thermometer: boil(100.5),
    });
    if (result.kind !== 'refused') throw new Error('planned');
    expect(result.problems).toMatchObject([
      {
        code: 'readings-disagree',
        path: '/thermometer/boilingWaterReadingC',
        also: '/kitchen/waterBoilsAtC',
      },
    ]);
  });

  it('weighs 0.65 °C of weather at 1 500 m', () => {
    const { band, value } = planOf({ kitchen: { elevationM: 1500 } }).kitchen.waterBoilsAtC;
    expect(value - band[0]).toBeCloseTo(0.65, 2);
  });
});

describe('every way to know the air gives the same stop where they say the same', () => {
  it.each([
    ['elevation', { elevationM: 1500 }],
    ['barometer', { pressurePa: 84_556 }],
    ['weather service', { seaLevelPressurePa: 101_325, elevationM: 1500 }],
    ['trusted thermometer', { waterBoilsAtC: 94.983 }],
  ] as const)('by %s', (_, kitchen) => {
    expect(stopOf({ kitchen })).toBeCloseTo(142.06, 1);
  });
});

describe('a vacuum', () => {
  it('lowers the stop and keeps the water', () => {
    const open = planOf({});
    const vacuum = planOf({ cook: { toSeaLevelC: 148, underVacuumPa: 90_000 } });
    expect(vacuum.target.hereC.value).toBeLessThan(open.target.hereC.value - 40);
    expect(vacuum.composition.baseMoistureMassFraction.value).toBeCloseTo(
      open.composition.baseMoistureMassFraction.value,
      9,
    );
    expect(vacuum.cautions.map(({ id }) => id)).toContain('vacuum-vessels');
  });
});
