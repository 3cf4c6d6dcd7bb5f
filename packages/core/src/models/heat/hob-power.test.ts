import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { type HeatSource, hobPower } from './hob-power.js';

const kettle = (boilsInMin: number, more: object = {}): HeatSource => ({
  kind: 'timed',
  waterG: 500,
  fromC: 20,
  boilsInMin,
  ...more,
});

describe('hobPower', () => {
  it.each([
    [2, 1_400],
    [4, 700],
    [6, 470],
    [8, 350],
  ])('reads half a litre that boils in %i minutes as %i W', (minutes, watts) => {
    expect(Math.abs(hobPower(kettle(minutes)).powerW - watts)).toBeLessThanOrEqual(5);
  });

  it('takes the pan the water was in for part of what was heated', () => {
    const { powerW } = hobPower(kettle(4), { panMassG: 1_000 });
    expect(powerW / hobPower(kettle(4)).powerW).toBeCloseTo(1 + 500 / (500 * 4.1868), 9);
  });

  it('knows that water boils sooner up the hill', () => {
    const { powerW } = hobPower(kettle(4), { pressurePa: 84_556 });
    // 94.99 °C under that pressure.
    expect(powerW).toBeCloseTo((500 * 4.1868 * 74.99) / 240, 0);
  });

  it('gives the pan a share of what is on the plate, with the band of the share', () => {
    expect(hobPower({ kind: 'gas', powerW: 3_000 })).toEqual({
      powerW: 1_080,
      band: [960, 1_200],
      warnings: [],
    });
    expect(hobPower({ kind: 'induction', powerW: 0 }).powerW).toBe(0);
  });

  it.each([
    ['no minutes', kettle(0)],
    ['minutes before it began', kettle(-1)],
    ['minutes that are none', kettle(Number.NaN)],
    ['no water', kettle(4, { waterG: 0 })],
    ['water that boils already', kettle(4, { fromC: 99.5 })],
    ['ice', kettle(4, { fromC: -1 })],
    ['less than no power', { kind: 'gas', powerW: -1 } as const],
    ['endless power', { kind: 'gas', powerW: Infinity } as const],
    ['a fire of another kind', { kind: 'campfire', powerW: 3_000 } as unknown as HeatSource],
    ['a name every object has', { kind: 'toString', powerW: 3_000 } as unknown as HeatSource],
  ])('refuses %s', (_, hob) => {
    expect(() => hobPower(hob)).toThrow(ModelRangeError);
  });

  it('refuses a pan that weighs less than nothing and a pressure of no kitchen', () => {
    expect(() => hobPower(kettle(4), { panMassG: -1 })).toThrow(ModelRangeError);
    expect(() => hobPower(kettle(4), { pressurePa: 500 })).toThrow(ModelRangeError);
  });
});
