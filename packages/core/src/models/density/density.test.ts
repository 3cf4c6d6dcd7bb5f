import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { aeratedDensity, airFromDensity } from './aerated.js';
import { type CandyKind, type CandyState, candyMassDensity } from './candy-mass.js';
import { cavityFromPieceMass, pieceMassFromCavity } from './cavity.js';
import { chargeDensity } from './charge.js';
import { densityFromBrix } from './sucrose-solution.js';

describe('densityFromBrix', () => {
  it.each([
    [0, 4, 999.972],
    [0, 20, 998.203],
    [0, 100, 958.345],
    [50, 20, 1229.65],
    [60, 20, 1286.61],
    [70, 20, 1347.48],
    [80, 20, 1412.2],
    [85, 20, 1445.94],
  ])('at %f °Bx and %f °C is %f kg/m³', (brix, temperatureC, density) => {
    const { densityKgPerM3, warnings } = densityFromBrix({ brix, temperatureC });
    expect(densityKgPerM3).toBeCloseTo(density, 2);
    expect(warnings).toEqual([]);
  });

  it('says that candy is beyond it', () => {
    const { densityKgPerM3, warnings } = densityFromBrix({ brix: 97.5, temperatureC: 140 });
    expect(densityKgPerM3).toBeCloseTo(1479, 0);
    expect(warnings.map((one) => one.parameter)).toEqual(['brix', 'temperatureC']);
  });

  it('refuses more sugar than there is solution', () => {
    expect(() => densityFromBrix({ brix: 101, temperatureC: 20 })).toThrow(ModelRangeError);
    expect(() => densityFromBrix({ brix: 50, temperatureC: Number.NaN })).toThrow(ModelRangeError);
  });

  it.each([
    ['brix', -0.1, [0, 100]],
    ['brix', 100.1, [0, 100]],
    ['temperatureC', -0.1, [0, 150]],
    ['temperatureC', 150.1, [0, 150]],
  ])('refuses a %s of %f', (parameter, received, limits) => {
    expect(() => densityFromBrix({ brix: 50, temperatureC: 20, [parameter]: received })).toThrow(
      expect.objectContaining({ code: 'outside-range', parameter, received, limits }),
    );
  });

  it('answers at its ends, the printed ones without a warning', () => {
    expect(densityFromBrix({ brix: 85, temperatureC: 100 }).warnings).toEqual([]);
    expect(densityFromBrix({ brix: 100, temperatureC: 150 }).warnings).toEqual([
      { code: 'outside-tested-range', parameter: 'brix', value: 100, limits: [0, 85] },
      { code: 'outside-tested-range', parameter: 'temperatureC', value: 150, limits: [0, 100] },
    ]);
  });
});

describe('chargeDensity', () => {
  it('of a pan at its first boil is about 1.33 g/mL', () => {
    const { densityGPerMl, band, warnings } = chargeDensity(0.75);
    expect(densityGPerMl).toBeCloseTo(1.33, 2);
    expect(band[0]).toBeCloseTo(densityGPerMl - 0.03, 12);
    expect(band[1]).toBeCloseTo(densityGPerMl + 0.03, 12);
    expect(warnings).toEqual([]);
    expect(chargeDensity(0.9).warnings).toMatchObject([{ parameter: 'brix', value: 90 }]);
  });

  it('goes from boiling water to no water at all', () => {
    expect(chargeDensity(0).densityGPerMl).toBeCloseTo(0.958, 3);
    expect(chargeDensity(1).densityGPerMl).toBeGreaterThan(1.5);
  });

  it('refuses a percentage, and less than nothing', () => {
    expect(() => chargeDensity(75)).toThrow(/percentage/);
    for (const received of [-0.01, 1.01]) {
      expect(() => chargeDensity(received)).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'drySolidsMassFraction',
          received,
          limits: [0, 1],
        }),
      );
    }
  });
});

describe('candyMassDensity', () => {
  it('gives cooled glass more than hot mass, and pulled sugar less', () => {
    expect(candyMassDensity({ state: 'cooled' })).toEqual({
      densityGPerMl: 1.5,
      band: [1.45, 1.55],
    });
    const hot = { densityGPerMl: 1.45, band: [1.42, 1.48] };
    expect(candyMassDensity({ state: 'hot' })).toEqual(hot);
    expect(candyMassDensity({ state: 'hot', kind: 'pulled' })).toEqual(hot);
    expect(candyMassDensity({ state: 'cooled', kind: 'pulled' })).toEqual({
      densityGPerMl: 1.25,
      band: [1.1, 1.4],
    });
  });

  it('knows no other state and no other kind', () => {
    expect(() => candyMassDensity({ state: 'frozen' as CandyState })).toThrow(
      expect.objectContaining({
        code: 'unknown-name',
        parameter: 'state',
        received: 'frozen',
        message: 'There is no estimate for this state; received frozen.',
      }),
    );
    // Also where the kind plays no part: a hot mass counts as clear, but a name must be one.
    for (const state of ['hot', 'cooled'] as const) {
      expect(() => candyMassDensity({ state, kind: 'toString' as CandyKind })).toThrow(
        expect.objectContaining({
          code: 'unknown-name',
          parameter: 'kind',
          received: 'toString',
          message: 'There is no estimate for this kind; received toString.',
        }),
      );
    }
  });
});

describe('a cavity', () => {
  it('of 4 mL holds 5.8 g, and a piece of 5.8 g needs 4 mL', () => {
    const piece = pieceMassFromCavity({ cavityMl: 4 });
    expect(piece.massG).toBeCloseTo(5.8, 12);
    expect(piece.band[0]).toBeCloseTo(5.68, 12);
    expect(piece.band[1]).toBeCloseTo(5.92, 12);
    const cavity = cavityFromPieceMass({ massG: 5.8 });
    expect(cavity.cavityMl).toBeCloseTo(4, 12);
    expect(cavity.band[0]).toBeCloseTo(5.8 / 1.48, 12);
    expect(cavity.band[1]).toBeCloseTo(5.8 / 1.42, 12);
  });

  it('is no smaller than nothing and no larger than a bath', () => {
    for (const received of [-1, 100_001]) {
      const refused = { code: 'outside-range', received, limits: [0, 100_000] };
      expect(() => pieceMassFromCavity({ cavityMl: received })).toThrow(
        expect.objectContaining({ ...refused, parameter: 'cavityMl' }),
      );
      expect(() => cavityFromPieceMass({ massG: received })).toThrow(
        expect.objectContaining({ ...refused, parameter: 'massG' }),
      );
    }
    expect(() => cavityFromPieceMass({ massG: Number.NaN })).toThrow(ModelRangeError);
    expect(pieceMassFromCavity({ cavityMl: 0 }).massG).toBe(0);
    expect(pieceMassFromCavity({ cavityMl: 100_000 }).massG).toBeCloseTo(145_000, 6);
  });
});

describe('a piece somebody weighed', () => {
  const weighedPiece = { massG: 5.6, volumeMl: 4 };

  it('takes the place of the estimate, hot and cooled', () => {
    for (const state of ['hot', 'cooled'] as const) {
      const { densityGPerMl, band } = candyMassDensity({ state, kind: 'fondant', weighedPiece });
      expect(densityGPerMl).toBeCloseTo(1.4, 12);
      expect(band[0]).toBeCloseTo(1.372, 12);
      expect(band[1]).toBeCloseTo(1.428, 12);
    }
    expect(pieceMassFromCavity({ cavityMl: 8, weighedPiece }).massG).toBeCloseTo(11.2, 12);
    expect(cavityFromPieceMass({ massG: 2.8, weighedPiece }).cavityMl).toBeCloseTo(2, 12);
  });

  it('weighs nothing cooked outside 0.1 to 1.6 g/mL: the two numbers are mixed up', () => {
    const mixedUp = { massG: 4, volumeMl: 58 };
    const heavy = { massG: 6.5, volumeMl: 4 };
    for (const wrong of [mixedUp, heavy, { massG: Number.NaN, volumeMl: 4 }]) {
      expect(() => candyMassDensity({ state: 'hot', weighedPiece: wrong })).toThrow(
        expect.objectContaining({ parameter: 'densityGPerMl', limits: [0.1, 1.6] }),
      );
    }
    for (const volumeMl of [0, -1, Number.NaN]) {
      expect(() =>
        candyMassDensity({ state: 'hot', weighedPiece: { massG: 1, volumeMl } }),
      ).toThrow(expect.objectContaining({ parameter: 'volumeMl' }));
    }
  });
});

describe('a piece as it cools', () => {
  it('takes three parts in a hundred less room and keeps its weight', () => {
    const { cooledMl, massG } = pieceMassFromCavity({ cavityMl: 4 });
    expect(cooledMl).toBeCloseTo((4 * 1.45) / 1.5, 12);
    const { densityGPerMl } = candyMassDensity({ state: 'cooled' });
    expect(cooledMl * densityGPerMl).toBeCloseTo(massG, 12);
    const weighedPiece = { massG: 5.6, volumeMl: 4 };
    expect(pieceMassFromCavity({ cavityMl: 4, weighedPiece }).cooledMl).toBe(cooledMl);
  });
});

describe('air in a mass', () => {
  it('lightens it by its share', () => {
    const { densityGPerMl } = aeratedDensity({ densityGPerMl: 1.5, airVolumeFraction: 1 / 6 });
    expect(densityGPerMl).toBeCloseTo(1.25, 12);
    const back = airFromDensity({ densityGPerMl, airFreeGPerMl: 1.5 });
    expect(back.airVolumeFraction).toBeCloseTo(1 / 6, 12);
    expect(airFromDensity({ densityGPerMl: 1.5, airFreeGPerMl: 1.5 }).airVolumeFraction).toBe(0);
  });

  it('is no more than nine tenths and no less than none', () => {
    for (const airVolumeFraction of [-0.1, 0.91, Number.NaN]) {
      expect(() => aeratedDensity({ densityGPerMl: 1.5, airVolumeFraction })).toThrow(
        expect.objectContaining({ parameter: 'airVolumeFraction', limits: [0, 0.9] }),
      );
    }
    for (const densityGPerMl of [1.51, 0.14, Number.NaN]) {
      expect(() => airFromDensity({ densityGPerMl, airFreeGPerMl: 1.5 })).toThrow(
        expect.objectContaining({ parameter: 'densityGPerMl' }),
      );
    }
    expect(() => aeratedDensity({ densityGPerMl: 1_500, airVolumeFraction: 0.1 })).toThrow(
      ModelRangeError,
    );
    expect(() => airFromDensity({ densityGPerMl: 1, airFreeGPerMl: 2 })).toThrow(
      expect.objectContaining({ parameter: 'airFreeGPerMl' }),
    );
  });
});
