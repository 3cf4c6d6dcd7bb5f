import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { answered } from './boil.fixture.js';
import { type CoolingOptions, coolingTime } from './cooling-time.js';
import { panCoolingTime } from './pan-cooling-time.js';

const drop = { massG: 5.8, fromC: 140, toC: 35 };
const cooled = (options: Partial<CoolingOptions> = {}) =>
  answered(coolingTime({ ...drop, ...options }));

describe('coolingTime', () => {
  it('takes a piece without a surface for a ball', () => {
    const radiusCm = Math.cbrt((3 * 5.8) / 1.5 / (4 * Math.PI));
    const ball = cooled({ areaCm2: 4 * Math.PI * radiusCm ** 2 });
    expect(cooled().minutes).toBeCloseTo(ball.minutes, 9);
  });

  it('is good to a factor of one and a half', () => {
    const { minutes, band } = cooled();
    expect(band).toEqual([minutes / 1.5, minutes * 1.5]);
  });

  it('is shorter by the fan and on the slab, which the middle does not follow', () => {
    const [air, fan, slab] = [cooled(), cooled({ surface: 'fan' }), cooled({ surface: 'slab' })];
    expect(fan.minutes).toBeCloseTo(air.minutes / 2.5, 9);
    expect(slab.minutes).toBeCloseTo(air.minutes / 10, 9);
    expect(air.warnings).toEqual([]);
    expect(slab.warnings).toEqual([
      {
        code: 'outside-tested-range',
        parameter: 'biotNumber',
        value: slab.biotNumber,
        limits: [0, 0.2],
      },
    ]);
  });

  it('holds to 6 mm of half thickness in still air', () => {
    // A plate cooled on both faces: half its thickness is what it weighs over its surface.
    expect(cooled({ massG: 18, areaCm2: 20 }).biotNumber).toBeCloseTo(0.2, 9);
  });

  it('says when there is nothing to wait for', () => {
    expect(coolingTime({ ...drop, airC: 35 })).toEqual({ kind: 'none', reason: 'never-cools' });
    expect(coolingTime({ ...drop, fromC: 35 })).toEqual({ kind: 'none', reason: 'already-cooler' });
  });

  it.each([
    { massG: 0 },
    { massG: Number.NaN },
    { areaCm2: 0 },
    { fromC: 300 },
    { toC: Number.NaN },
    { airC: -60 },
    { coefficientWPerM2K: 0 },
    { specificHeatKJPerKgK: 20 },
    { surface: 'water' as 'fan' },
    { surface: 'toString' as 'fan' },
  ])('refuses %o', (options) => {
    expect(() => cooled(options)).toThrow(ModelRangeError);
  });
});

describe('panCoolingTime', () => {
  const mass = { massG: 1_300, panDiameterMm: 200, fromC: 150, toC: 120 };

  it('waits for the pan too', () => {
    const bare = answered(panCoolingTime(mass));
    const steel = answered(panCoolingTime({ ...mass, panMassG: 1_300 }));
    expect(steel.minutes).toBeCloseTo(bare.minutes * 1.25, 9);
  });

  it('follows its own exponential', () => {
    const { timeConstantS, minutes } = answered(panCoolingTime({ ...mass, airC: 20 }));
    expect(20 + 130 * Math.exp((-60 * minutes) / timeConstantS)).toBeCloseTo(120, 9);
  });

  it('is shorter in a wide pan', () => {
    const wide = answered(panCoolingTime({ ...mass, panDiameterMm: 300 }));
    expect(wide.minutes).toBeLessThan(answered(panCoolingTime(mass)).minutes);
  });

  it('says when there is nothing to wait for', () => {
    expect(panCoolingTime({ ...mass, toC: 20 })).toEqual({ kind: 'none', reason: 'never-cools' });
    expect(panCoolingTime({ ...mass, toC: 150 })).toHaveProperty('reason', 'already-cooler');
  });

  it.each([{ massG: 0 }, { panDiameterMm: 5 }, { panMassG: -1 }, { fromC: Number.NaN }])(
    'refuses %o',
    (options) => {
      expect(() => panCoolingTime({ ...mass, ...options })).toThrow(ModelRangeError);
    },
  );
});
