import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import {
  drySolidsFromCommercialBaume,
  glucoseSyrupCommercialBaume,
  specificGravityFromCommercialBaume,
} from './commercial-baume.js';
import { glucoseSyrupDensity } from './glucose-syrup-density.js';
import {
  drySolidsFromGlucoseSyrupRefractiveIndex,
  glucoseSyrupRefractiveIndex,
} from './glucose-syrup-refraction.js';
import {
  drySolidsFromSucroseRefractometer,
  sucroseRefractometerOverread,
} from './sucrose-refractometer.js';
import { densityFromBrix } from './sucrose-solution.js';
import { waterDensity } from './water-density.js';

const syrup = { dextroseEquivalent: 42, drySolidsMassFraction: 0.8 };

describe('glucoseSyrupDensity', () => {
  it('is one part in a hundred over sucrose at 42 and 80 %', () => {
    const { densityKgPerM3, band, warnings } = glucoseSyrupDensity({ ...syrup, temperatureC: 20 });
    const sucrose = densityFromBrix({ brix: 80, temperatureC: 20 }).densityKgPerM3;
    expect(densityKgPerM3).toBeCloseTo(1.01 * sucrose, 9);
    expect(band[0]).toBeCloseTo(0.995 * densityKgPerM3, 9);
    expect(band[1]).toBeCloseTo(1.005 * densityKgPerM3, 9);
    expect(warnings).toEqual([]);
    const low = glucoseSyrupDensity({ ...syrup, dextroseEquivalent: 20, temperatureC: 20 });
    expect(low.densityKgPerM3).toBeCloseTo(1.0188 * sucrose, 9);
  });

  it('reaches the printed 1.415 at 100 °F inside its band', () => {
    const ask = { dextroseEquivalent: 42, drySolidsMassFraction: 0.803, temperatureC: 37.78 };
    const water = waterDensity(15.56).densityKgPerM3;
    const { band } = glucoseSyrupDensity(ask);
    expect(band[0] / water).toBeLessThan(1.415);
    expect(band[1] / water).toBeGreaterThan(1.415);
  });

  it('warns beyond what the fit was made for', () => {
    const { warnings } = glucoseSyrupDensity({
      dextroseEquivalent: 75,
      drySolidsMassFraction: 0.9,
      temperatureC: 120,
    });
    expect(warnings.map(({ parameter }) => parameter)).toEqual([
      'dextroseEquivalent',
      'drySolidsMassFraction',
      'temperatureC',
    ]);
  });

  it('refuses what is no syrup', () => {
    for (const wrong of [
      { dextroseEquivalent: 0 },
      { dextroseEquivalent: 101 },
      { drySolidsMassFraction: 80 },
      { temperatureC: -1 },
      { temperatureC: Number.NaN },
    ]) {
      expect(() => glucoseSyrupDensity({ ...syrup, temperatureC: 20, ...wrong })).toThrow(
        ModelRangeError,
      );
    }
  });
});

describe('commercial Baumé', () => {
  it('of 43 is a specific gravity of 1.4078', () => {
    expect(specificGravityFromCommercialBaume(43).specificGravity).toBeCloseTo(145 / 103, 12);
    expect(() => specificGravityFromCommercialBaume(61)).toThrow(
      expect.objectContaining({ parameter: 'commercialBaume' }),
    );
  });

  it('of the common grade is 43, within half a degree', () => {
    const { commercialBaume, band, warnings } = glucoseSyrupCommercialBaume({
      ...syrup,
      drySolidsMassFraction: 0.803,
    });
    expect(commercialBaume).toBeCloseTo(42.909, 3);
    expect(band[0]).toBeLessThan(42.41);
    expect(band[1]).toBeGreaterThan(43.41);
    expect(warnings).toEqual([]);
    const { specificGravity } = specificGravityFromCommercialBaume(commercialBaume);
    const { densityKgPerM3 } = glucoseSyrupDensity({
      ...syrup,
      drySolidsMassFraction: 0.803,
      temperatureC: 60,
    });
    expect(specificGravity).toBeCloseTo(densityKgPerM3 / waterDensity(15.56).densityKgPerM3, 12);
    expect(() => glucoseSyrupCommercialBaume({ ...syrup, dextroseEquivalent: 0 })).toThrow(
      ModelRangeError,
    );
    expect(glucoseSyrupCommercialBaume({ ...syrup, dextroseEquivalent: 10 }).warnings).toHaveLength(
      1,
    );
  });

  it.each([
    [42, 42, 0.78],
    [42, 43, 0.803],
    [42, 44, 0.822],
    [36, 43, 0.799],
    [47, 43, 0.8085],
    [63, 44, 0.839],
    [42, 42.5, 0.7915],
  ])('tells the solids of DE %d at %f °Bé', (dextroseEquivalent, commercialBaume, solids) => {
    const { drySolidsMassFraction, band } = drySolidsFromCommercialBaume({
      commercialBaume,
      dextroseEquivalent,
    });
    expect(drySolidsMassFraction).toBeCloseTo(solids, 9);
    expect(band[0]).toBeCloseTo(solids - 0.003, 9);
    expect(band[1]).toBeCloseTo(solids + 0.003, 9);
  });

  it('does not run on beyond its rows', () => {
    for (const commercialBaume of [41.9, 44.1, Number.NaN]) {
      expect(() =>
        drySolidsFromCommercialBaume({ commercialBaume, dextroseEquivalent: 42 }),
      ).toThrow(expect.objectContaining({ parameter: 'commercialBaume' }));
    }
    for (const dextroseEquivalent of [35.9, 63.1]) {
      expect(() =>
        drySolidsFromCommercialBaume({ commercialBaume: 43, dextroseEquivalent }),
      ).toThrow(expect.objectContaining({ parameter: 'dextroseEquivalent', limits: [36, 63] }));
    }
  });
});

describe('refraction of glucose syrup', () => {
  it('is that of the printed table, and leads back', () => {
    const ask = { drySolidsMassFraction: 0.6, temperatureC: 45 };
    const { refractiveIndex, warnings } = glucoseSyrupRefractiveIndex(ask);
    expect(refractiveIndex).toBeCloseTo(1.44296, 4);
    expect(warnings).toEqual([]);
    const back = drySolidsFromGlucoseSyrupRefractiveIndex({ refractiveIndex, temperatureC: 45 });
    expect(back.drySolidsMassFraction).toBeCloseTo(0.6, 9);
    expect(back.warnings).toEqual([]);
  });

  it('warns beyond the table', () => {
    const ask = { drySolidsMassFraction: 0.8, temperatureC: 15 };
    const { refractiveIndex, warnings } = glucoseSyrupRefractiveIndex(ask);
    const back = drySolidsFromGlucoseSyrupRefractiveIndex({ refractiveIndex, temperatureC: 15 });
    for (const list of [warnings, back.warnings]) {
      expect(list.map(({ parameter }) => parameter)).toEqual([
        'drySolidsMassFraction',
        'temperatureC',
      ]);
    }
  });

  it('does not read hot syrup, nor what is no syrup', () => {
    const solids = { drySolidsMassFraction: 0.6 };
    for (const temperatureC of [9.9, 60.1, 110, Number.NaN]) {
      const refused = expect.objectContaining({ parameter: 'temperatureC', limits: [10, 60] });
      expect(() => glucoseSyrupRefractiveIndex({ ...solids, temperatureC })).toThrow(refused);
      expect(() =>
        drySolidsFromGlucoseSyrupRefractiveIndex({ refractiveIndex: 1.4, temperatureC }),
      ).toThrow(refused);
    }
    expect(() =>
      glucoseSyrupRefractiveIndex({ drySolidsMassFraction: 0.86, temperatureC: 20 }),
    ).toThrow(ModelRangeError);
    for (const refractiveIndex of [1.33, 1.52, Number.NaN]) {
      expect(() =>
        drySolidsFromGlucoseSyrupRefractiveIndex({ refractiveIndex, temperatureC: 20 }),
      ).toThrow(expect.objectContaining({ parameter: 'refractiveIndex' }));
    }
  });
});

describe('a sugar refractometer in glucose syrup', () => {
  it('reads 2.5 °Bx too high at 60 % in a syrup of low DE, and right in dextrose', () => {
    const at = (dextroseEquivalent: number) =>
      sucroseRefractometerOverread({ drySolidsMassFraction: 0.6, dextroseEquivalent });
    expect(at(20).overreadBrix).toBeCloseTo(2.508, 3);
    expect(at(60).overreadBrix).toBeCloseTo(2.508 / 2, 3);
    expect(at(100).overreadBrix).toBeCloseTo(0, 12);
    expect(at(20).band[0]).toBeCloseTo(0.5 * at(20).overreadBrix, 12);
    expect(at(20).band[1]).toBeCloseTo(1.5 * at(20).overreadBrix, 12);
    expect(at(20).warnings).toEqual([]);
  });

  it('tells the solids behind a reading', () => {
    const { overreadBrix } = sucroseRefractometerOverread({
      drySolidsMassFraction: 0.6,
      dextroseEquivalent: 42,
    });
    const reading = { brix: 60 + overreadBrix, dextroseEquivalent: 42 };
    const { drySolidsMassFraction, band, warnings } = drySolidsFromSucroseRefractometer(reading);
    expect(drySolidsMassFraction).toBeCloseTo(0.6, 9);
    expect(band[0]).toBeCloseTo(0.6 - overreadBrix / 200, 9);
    expect(band[1]).toBeCloseTo(0.6 + overreadBrix / 200, 9);
    expect(warnings).toEqual([]);
  });

  it('finds no solids, or next to none, where it shows none', () => {
    for (const dextroseEquivalent of [20, 100]) {
      const { drySolidsMassFraction, band } = drySolidsFromSucroseRefractometer({
        brix: 0,
        dextroseEquivalent,
      });
      expect(drySolidsMassFraction).toBeLessThan(1e-4);
      expect(band[0]).toBeGreaterThanOrEqual(0);
    }
  });

  it('warns of strong syrup', () => {
    const strong = { drySolidsMassFraction: 0.8, dextroseEquivalent: 42 };
    const { overreadBrix, warnings } = sucroseRefractometerOverread(strong);
    const back = drySolidsFromSucroseRefractometer({
      brix: 80 + overreadBrix,
      dextroseEquivalent: 42,
    });
    for (const list of [warnings, back.warnings]) {
      expect(list).toMatchObject([{ parameter: 'drySolidsMassFraction', limits: [0, 0.66] }]);
    }
  });

  it('refuses what it cannot show', () => {
    for (const wrong of [{ dextroseEquivalent: 0 }, { drySolidsMassFraction: 0.86 }]) {
      expect(() => sucroseRefractometerOverread({ ...syrup, ...wrong })).toThrow(ModelRangeError);
    }
    for (const brix of [-0.1, 90, Number.NaN]) {
      expect(() => drySolidsFromSucroseRefractometer({ brix, dextroseEquivalent: 42 })).toThrow(
        expect.objectContaining({ parameter: 'brix' }),
      );
    }
    expect(() => drySolidsFromSucroseRefractometer({ brix: 50, dextroseEquivalent: 101 })).toThrow(
      ModelRangeError,
    );
  });
});
