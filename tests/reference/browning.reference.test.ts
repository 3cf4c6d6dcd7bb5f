import {
  boilingCandyRegimeTable as curveTable,
  inversionBrowningEnergyTable as energyTable,
  inversionCaramelOnsetTable as onsetTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import { BROWNING_ENERGY_KJ_PER_MOL, BROWNING_ONSETS, thermalLoad } from 'vitrose';

describe(`the energies of thermalLoad against ${energyTable.id}: ${energyTable.source.title}`, () => {
  const { sugar, reducing } = BROWNING_ENERGY_KJ_PER_MOL;
  const rows = energyTable.rows.filter((row) => row.activationEnergyLowKJPerMol !== null);

  it('reach from what is printed for sucrose to the breakdown of its halves', () => {
    const printed = rows.filter(({ system }) => /^sucrose|breakdown/.test(system));
    expect(printed).toHaveLength(3);
    for (const { activationEnergyLowKJPerMol: energy } of printed) {
      expect(energy).toBeGreaterThanOrEqual(sugar.low - 0.5);
      expect(energy).toBeLessThanOrEqual(sugar.high + 0.5);
    }
  });

  it('with amino acids, over the whole printed range', () => {
    const printed = rows.filter(({ system }) => system.includes('amino acids'));
    expect(printed).toHaveLength(1);
    expect(printed[0]?.activationEnergyLowKJPerMol).toBe(reducing.low);
    expect(printed[0]?.activationEnergyHighKJPerMol).toBe(reducing.high);
  });
});

describe(`the onsets of browning against ${onsetTable.id}: ${onsetTable.source.title}`, () => {
  const rows = onsetTable.rows.filter(({ sugar }) => sugar !== 'galactose');

  it.each(rows)('put $sugar at $onsetC °C', ({ sugar, onsetC, mcgeeC }) => {
    const onset: { readonly value: number; readonly low?: number; readonly high?: number } =
      BROWNING_ONSETS[sugar as keyof typeof BROWNING_ONSETS];
    expect(onset.value).toBe(onsetC);
    if (mcgeeC === null) return;
    expect(onset.low).toBe(Math.min(onsetC, mcgeeC));
    expect(onset.high).toBe(Math.max(onsetC, mcgeeC));
  });
});

describe(`thermalLoad of boils along ${curveTable.id}: ${curveTable.source.title}`, () => {
  /** The printed curve between its points: what water boils at, and what boils at a temperature. */
  const between = (x: number, from: 'drySolidsPercent' | 'boilingPointC') => {
    const to = from === 'boilingPointC' ? 'drySolidsPercent' : 'boilingPointC';
    const at = curveTable.rows.findIndex((row) => row[from] >= x);
    const [low, high] = [curveTable.rows[at - 1], curveTable.rows[at]];
    if (low === undefined || high === undefined) throw new RangeError(`${x} is off the curve.`);
    return low[to] + ((x - low[from]) / (high[from] - low[from])) * (high[to] - low[to]);
  };

  /** From 1 kg of sugar in 0.4 kg of water, the water falling evenly in time. */
  const boil = (toC: number, minutes: number) => {
    const endG = 1_000 * (100 / between(toC, 'boilingPointC') - 1);
    return Array.from({ length: 401 }, (_, step) => {
      const waterG = 400 + ((endG - 400) * step) / 400;
      const temperatureC = between(100_000 / (1_000 + waterG), 'drySolidsPercent');
      return { timeS: (60 * minutes * step) / 400, temperatureC };
    });
  };

  it.each([
    [15, 150, 1.6],
    [25, 150, 2.7],
    [45, 150, 4.8],
    [25, 145, 2.2],
    [25, 160, 4],
  ])('of %i min to %i °C is %f min at 150 °C, give or take a quarter', (minutes, toC, load) => {
    const { minutesAt150C, band } = thermalLoad(boil(toC, minutes));
    expect(Math.abs(minutesAt150C - load)).toBeLessThanOrEqual(0.05);
    expect(band[0]).toBeGreaterThan(0.7 * minutesAt150C);
    expect(band[1]).toBeLessThan(1.3 * minutesAt150C);
  });

  it('counts a minute at 130 °C as 0.18', () => {
    const held = [0, 60].map((timeS) => ({ timeS, temperatureC: 130 }));
    expect(thermalLoad(held).minutesAt150C).toBeCloseTo(0.18, 2);
  });
});
