import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { answered, KILOWATT, sugarAndWater } from './boil.fixture.js';
import { boilDown } from './boil-down.js';
import { carryOver } from './carry-over.js';
import { powerForRate } from './power-for-rate.js';

const charge = sugarAndWater();
type Rate = Parameters<typeof powerForRate>[1];
const power = (options: Partial<Rate> = {}) =>
  answered(powerForRate(charge, { temperatureC: 145, rateKPerMin: 3, ...options }));

describe('powerForRate', () => {
  it('gives back the power a boil was made with', () => {
    const pan = { panMassG: 1_000, panDiameterMm: 200 };
    for (const targetC of [112, 130, 148]) {
      const boil = answered(boilDown(charge, { hob: KILOWATT, targetC }));
      const { powerW } = power({ temperatureC: targetC, rateKPerMin: boil.rateAtEndKPerMin });
      expect(powerW).toBeCloseTo(1_000, 6);
      const inPan = answered(boilDown(charge, { hob: KILOWATT, targetC, ...pan }));
      const rateKPerMin = inPan.rateAtEndKPerMin;
      const { shareOfFullPower } = power({
        temperatureC: targetC,
        rateKPerMin,
        hob: KILOWATT,
        ...pan,
      });
      // The side the mass wets is told from the charge there and from what is left of it here.
      expect(Math.abs((shareOfFullPower ?? 0) - 1)).toBeLessThan(0.02);
    }
  });

  it('takes no more than the loss to stand still', () => {
    const { powerIntoMassW, powerW } = power({ rateKPerMin: 0, surfaceLossW: 120 });
    expect([powerIntoMassW, powerW]).toEqual([0, 120]);
  });

  it('says a share only of a hob, and a lag only of a thermometer', () => {
    expect(power()).not.toHaveProperty('shareOfFullPower');
    expect(power()).not.toHaveProperty('lagK');
    expect(power({ tauS: 22, rateKPerMin: 5 }).lagK).toBeCloseTo(1.833, 3);
    expect(power({ hob: { kind: 'gas', powerW: 500 } }).shareOfFullPower).toBeGreaterThan(1);
  });

  it('has no answer where nothing boils', () => {
    expect(powerForRate(charge, { temperatureC: 90, rateKPerMin: 3 })).toEqual({
      kind: 'none',
      reason: 'below-the-boil',
    });
  });

  it.each([
    { rateKPerMin: -1 },
    { rateKPerMin: Number.NaN },
    { temperatureC: 400 },
    { tauS: -1 },
    { panMassG: Number.NaN },
    { pressurePa: 0 },
  ])('refuses %o', (options) => {
    expect(() => power(options)).toThrow(ModelRangeError);
  });
});

describe('carryOver', () => {
  it('is 2 to 3 K for each kilogram of steel under a kilogram of crack', () => {
    const { carryOverK, band } = answered(
      carryOver(charge, { temperatureC: 153.4, panMassG: 1_000 }),
    );
    expect(carryOverK).toBeCloseTo(2.15, 2);
    expect(band[0]).toBeCloseTo(carryOverK / 3, 9);
    // Common practice says about 3 K, which is all of the heat making steam.
    expect(band[1]).toBeCloseTo(3, 0);
  });

  it('is nothing without a pan, or with one no hotter than the mass', () => {
    const none = { temperatureC: 150, panMassG: 0 };
    expect(answered(carryOver(charge, none)).carryOverK).toBe(0);
    const even = { temperatureC: 150, panMassG: 1_000, baseHotterK: 0 };
    expect(answered(carryOver(charge, even)).carryOverK).toBe(0);
  });

  it('has no answer where nothing boils', () => {
    expect(carryOver(charge, { temperatureC: 90, panMassG: 1_000 })).toHaveProperty('kind', 'none');
  });

  it.each([{ panMassG: -1 }, { panMassG: 1, baseHotterK: 201 }, { panMassG: 1, pressurePa: 1 }])(
    'refuses %o',
    (options) => {
      expect(() => carryOver(charge, { temperatureC: 150, ...options })).toThrow(ModelRangeError);
    },
  );
});
