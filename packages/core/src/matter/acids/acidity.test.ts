import { describe, expect, it } from 'vitest';
import { mixture } from '../mixture/mixture.js';
import { solutionOf } from '../mixture/solution-of.js';
import { acidity } from './acidity.js';
import { bufferForPH } from './buffer.js';
import { tartrateSolubilityGPerKg } from './tartrate-solubility.js';
import type { AcidMasses } from './types.js';

const water = (acids: AcidMasses, waterG = 1_000) => ({ waterG, acids });

describe('acidity', () => {
  it('counts the water, not the sugar that stands in it', () => {
    const sweet = mixture([
      { ingredient: 'sucrose', massG: 650 },
      { ingredient: 'water', massG: 350 },
      { ingredient: 'tartaric-acid', massG: 0.21, drySolidsMassFraction: 1 },
    ]);
    expect(acidity(sweet)).toEqual(acidity(water({ 'tartaric-acid': 0.21 }, 350)));
    expect(acidity(sweet).pH).toBeCloseTo(2.79, 2);
  });

  it('gives the pH of the syrup where there is no acid, with its spread', () => {
    const plain = { pH: 5, band: [4.5, 5.5], from: 'syrup', undissolvedG: 0 };
    expect(acidity(solutionOf('sucrose', { drySolidsMassFraction: 0.8 }))).toEqual(plain);
    expect(acidity(water({}))).toEqual(plain);
    expect(acidity(water({}), { syrupPH: 3.9 })).toMatchObject({ pH: 3.9, band: [3.9, 3.9] });
  });

  it('is never less sour than the syrup, whatever soda is in it', () => {
    const soda = acidity(water({ 'citric-acid': 1, 'sodium-bicarbonate': 2 }));
    expect(soda).toMatchObject({ pH: 5, from: 'syrup' });
  });

  it('holds 0.15 either way about an acid', () => {
    const { pH, band, from } = acidity(water({ 'citric-acid': 19.212 }));
    expect(pH).toBeCloseTo(2.082, 3);
    expect(band[0]).toBeCloseTo(pH - 0.15, 12);
    expect(band[1]).toBeCloseTo(pH + 0.15, 12);
    expect(from).toBe('acid');
  });

  it('lets bicarbonate take one proton, citrate bring three sodium', () => {
    const alkaline = { alkalinityMmolPerL: 50 };
    const hard = acidity(water({ 'citric-acid': 19.212 }), alkaline).pH;
    expect(hard).toBeCloseTo(3.113, 3);
    const soda = { 'citric-acid': 19.212, 'sodium-bicarbonate': 0.05 * 84.01 };
    expect(acidity(water(soda)).pH).toBeCloseTo(hard, 9);
    // Two thirds citric acid and a third its sodium salt, as citric acid half way to its first.
    const salt = { 'citric-acid': (2 / 30) * 192.12, 'sodium-citrate': (1 / 30) * 258.07 };
    const same = acidity(water({ 'citric-acid': 19.212 }), { alkalinityMmolPerL: 50 }).pH;
    expect(acidity(water(salt)).pH).toBeGreaterThan(same);
    const lactate = { 'lactic-acid': 9.008, 'sodium-lactate': 11.206 };
    expect(acidity(water(lactate)).pH).toBeCloseTo(3.86, 2);
  });

  it('counts the alkalinity of the tap water, not of what is left of it', () => {
    const acids = { 'potassium-hydrogen-tartrate': 1 };
    const left = acidity(water(acids, 100), { alkalinityMmolPerL: 2, tapWaterG: 400 });
    const strong = acidity(water(acids, 100), { alkalinityMmolPerL: 8 });
    expect(left).toEqual(strong);
  });

  it('leaves cream of tartar undissolved in cold water, and says how much', () => {
    const much = water({ 'potassium-hydrogen-tartrate': 20 });
    expect(acidity(much, { temperatureC: 10 }).undissolvedG).toBeCloseTo(16, 9);
    expect(acidity(much, { temperatureC: 25 }).undissolvedG).toBeCloseTo(14, 9);
    expect(acidity(much, { temperatureC: 100 }).undissolvedG).toBe(0);
    const saturated = acidity(water({ 'potassium-hydrogen-tartrate': 6 }));
    expect(acidity(much).pH).toBeCloseTo(saturated.pH, 12);
  });

  it('refuses what cannot be meant', () => {
    const refused = (of: () => unknown) => expect(of);
    refused(() => acidity(water({}, 0))).toThrow(/Water g must lie between/);
    refused(() => acidity(water({ 'citric-acid': Number.NaN }))).toThrow(/must be a number/);
    refused(() => acidity(water({}), { alkalinityMmolPerL: 51 })).toThrow(/between 0 and 50/);
    refused(() => acidity(water({}), { temperatureC: 201 })).toThrow(/between 0 and 200/);
    refused(() => acidity(water({}), { syrupPH: 1 })).toThrow(/between 2 and 9/);
    refused(() => acidity(water({}), { tapWaterG: -1 })).toThrow(/Tap water g/);
    refused(() => acidity(water({ vinegar: 5 } as unknown as AcidMasses))).toThrow(
      expect.objectContaining({ code: 'unknown-name', parameter: 'acids', received: 'vinegar' }),
    );
    expect(acidity(water({ 'citric-acid': undefined } as unknown as AcidMasses)).from).toBe(
      'syrup',
    );
  });
});

describe('what cream of tartar dissolves', () => {
  it('meets the printed points, and stays at the last one beyond', () => {
    expect(tartrateSolubilityGPerKg(10)).toBeCloseTo(4, 12);
    expect(tartrateSolubilityGPerKg(25)).toBeCloseTo(6, 12);
    expect(tartrateSolubilityGPerKg(100)).toBeCloseTo(61, 12);
    expect(tartrateSolubilityGPerKg(0)).toBeCloseTo(4, 12);
    expect(tartrateSolubilityGPerKg(150)).toBeCloseTo(61, 12);
    expect(tartrateSolubilityGPerKg(62.5)).toBeCloseTo(10 * Math.sqrt(0.6 * 6.1), 9);
  });
});

describe('bufferForPH', () => {
  const sour = water({ 'citric-acid': 10 }, 25);

  it('brings a sour mass to the pH wanted', () => {
    const buffer = bufferForPH(sour);
    if ('kind' in buffer) throw new Error(buffer.reason);
    expect(buffer.pHBefore).toBeCloseTo(acidity(sour).pH, 9);
    const acids = { 'citric-acid': 10, 'sodium-citrate': buffer.sodiumCitrateG };
    expect(acidity(water(acids, 25)).pH).toBeCloseTo(3, 6);
    expect(buffer.dihydrateG / buffer.sodiumCitrateG).toBeCloseTo(294.1 / 258.07, 9);
  });

  it('counts cream of tartar as far as it dissolves', () => {
    const acids = { 'tartaric-acid': 5, 'potassium-hydrogen-tartrate': 5 };
    const options = { targetPH: 3.2, temperatureC: 60 };
    const buffer = bufferForPH(water(acids, 100), options);
    if ('kind' in buffer) throw new Error(buffer.reason);
    const tamed = water({ ...acids, 'sodium-citrate': buffer.sodiumCitrateG }, 100);
    expect(acidity(tamed, { temperatureC: 60 }).pH).toBeCloseTo(3.2, 6);
  });

  it('has nothing to do where it is mild enough', () => {
    expect(bufferForPH(water({}))).toEqual({ kind: 'none', reason: 'already-above' });
    expect(bufferForPH(water({ 'citric-acid': 1 }), { targetPH: 1.5 })).toEqual({
      kind: 'none',
      reason: 'already-above',
    });
  });

  it('refuses what cannot be meant', () => {
    expect(() => bufferForPH(sour, { targetPH: 5 })).toThrow(/between 1.5 and 4.5/);
    expect(() => bufferForPH(sour, { temperatureC: -1 })).toThrow(/between 0 and 200/);
    expect(() => bufferForPH(water({}, 0))).toThrow(/Water g/);
  });
});
