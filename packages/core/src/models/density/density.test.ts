import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import {
  type CandyKind,
  type CandyState,
  candyMassDensity,
  cavityFromPieceMass,
  pieceMassFromCavity,
} from './candy-mass.js';
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
});

describe('chargeDensity', () => {
  it('of a pan at its first boil is about 1.33 g/mL', () => {
    const { densityGPerMl, band, warnings } = chargeDensity(0.75);
    expect(densityGPerMl).toBeCloseTo(1.33, 2);
    expect(band[1] - band[0]).toBeCloseTo(0.06, 12);
    expect(warnings).toEqual([]);
    expect(chargeDensity(0.9).warnings).toHaveLength(1);
  });

  it('refuses a percentage', () => {
    expect(() => chargeDensity(75)).toThrow(/percentage/);
  });
});

describe('candyMassDensity', () => {
  it('gives cooled glass more than hot mass, and pulled sugar less', () => {
    expect(candyMassDensity({ state: 'cooled' })).toEqual({
      densityGPerMl: 1.5,
      band: [1.45, 1.55],
    });
    expect(candyMassDensity({ state: 'hot' }).densityGPerMl).toBe(1.45);
    expect(candyMassDensity({ state: 'hot', kind: 'pulled' }).densityGPerMl).toBe(1.45);
    expect(candyMassDensity({ state: 'cooled', kind: 'pulled' }).densityGPerMl).toBe(1.25);
  });

  it('knows no other state and no other kind', () => {
    expect(() => candyMassDensity({ state: 'frozen' as CandyState })).toThrow(ModelRangeError);
    expect(() => candyMassDensity({ state: 'cooled', kind: 'toString' as CandyKind })).toThrow(
      ModelRangeError,
    );
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
    expect(cavity.band[0]).toBeLessThan(4);
    expect(cavity.band[1]).toBeGreaterThan(4);
  });

  it('is no smaller than nothing', () => {
    expect(() => pieceMassFromCavity({ cavityMl: -1 })).toThrow(ModelRangeError);
    expect(() => cavityFromPieceMass({ massG: Number.NaN })).toThrow(ModelRangeError);
  });
});
