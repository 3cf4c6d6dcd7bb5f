import { describe, expect, it } from 'vitest';
import { thermalLoad } from './thermal-load.js';

const held = (temperatureC: number, minutes = 1) => [
  { timeS: 0, temperatureC },
  { timeS: 60 * minutes, temperatureC },
];

describe('thermalLoad', () => {
  it('of a minute at 150 °C is a minute, whatever browns', () => {
    for (const reducing of [false, true]) {
      const { minutesAt150C, band, warnings } = thermalLoad(held(150), { reducing });
      expect(minutesAt150C).toBeCloseTo(1, 12);
      expect(band[0]).toBeCloseTo(1, 12);
      expect(band[1]).toBeCloseTo(1, 12);
      expect(warnings).toEqual([]);
    }
  });

  it('of a minute at 130 °C is a fifth of one, less with milk in it', () => {
    const { minutesAt150C, band } = thermalLoad(held(130));
    expect(minutesAt150C).toBeCloseTo(0.184, 3);
    expect(band[0]).toBeCloseTo(0.139, 3);
    expect(band[1]).toBeCloseTo(0.2275, 4);
    expect(thermalLoad(held(130), { reducing: true }).minutesAt150C).toBeCloseTo(0.139, 3);
  });

  it('has its band the right way round over 150 °C too', () => {
    const { minutesAt150C, band } = thermalLoad(held(158));
    expect(band[0]).toBeLessThan(minutesAt150C);
    expect(band[1]).toBeGreaterThan(minutesAt150C);
  });

  it('adds up along a path, however it is cut', () => {
    const rise = [
      { timeS: 0, temperatureC: 100 },
      { timeS: 900, temperatureC: 160 },
    ];
    const cut = Array.from({ length: 61 }, (_, at) => ({
      timeS: 15 * at,
      temperatureC: 100 + at,
    }));
    expect(thermalLoad(rise).minutesAt150C).toBeCloseTo(thermalLoad(cut).minutesAt150C, 4);
  });

  it('is nothing at one point, and warns past 160 °C', () => {
    expect(thermalLoad([{ timeS: 0, temperatureC: 150 }]).minutesAt150C).toBe(0);
    expect(thermalLoad(held(170)).warnings).toEqual([
      { code: 'outside-tested-range', parameter: 'temperatureC', value: 170, limits: [60, 160] },
    ]);
  });

  it('refuses a path that cannot be walked', () => {
    const [a, b] = held(150);
    if (a === undefined || b === undefined) throw new Error('no path');
    expect(() => thermalLoad([])).toThrow('The path holds no point; received 0.');
    expect(() => thermalLoad([b, a])).toThrow('The path runs back in time; received 0.');
    expect(() => thermalLoad([{ ...a, temperatureC: 221 }])).toThrow(/between 0 and 220/);
    expect(() => thermalLoad([{ ...a, timeS: Number.NaN }])).toThrow(/must be a number/);
  });
});
