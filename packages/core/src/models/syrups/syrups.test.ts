import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { dextroseCrystallises } from './dextrose-crystallises.js';
import { invertSyrup } from './invert-syrup.js';
import { swapDriedForSyrup, swapSyrupForDried } from './swap-syrup.js';
import { syrupDefinitions } from './syrup-definitions.js';
import { syrupFromDried } from './syrup-from-dried.js';

const syrup = { drySolidsMassFraction: 0.803 };
const dried = { drySolidsMassFraction: 0.96 };

describe('syrupFromDried', () => {
  it('makes a kilogram of syrup', () => {
    const target = { massG: 1_000, drySolidsMassFraction: 0.8 };
    expect(syrupFromDried({ dried, target })).toEqual({
      driedG: expect.closeTo(833.333, 3),
      waterG: expect.closeTo(166.667, 3),
    });
  });

  it('cannot make it drier than the powder', () => {
    const target = { massG: 1_000, drySolidsMassFraction: 0.98 };
    expect(syrupFromDried({ dried, target })).toEqual({
      kind: 'none',
      reason: 'too-dilute',
      highestDrySolidsMassFraction: 0.96,
      waterToRemoveG: expect.closeTo(1_000 * (0.98 / 0.96 - 1), 9),
    });
    const same = syrupFromDried({ dried, target: { ...dried, massG: 10 } });
    expect(same).toEqual({ driedG: expect.closeTo(10, 12), waterG: expect.closeTo(0, 12) });
  });

  it('refuses what cannot be meant', () => {
    const target = { massG: 1, drySolidsMassFraction: 0.8 };
    for (const wrong of [0, 1.1, Number.NaN]) {
      const strength = { drySolidsMassFraction: wrong };
      expect(() => syrupFromDried({ dried: strength, target })).toThrow(ModelRangeError);
      expect(() => syrupFromDried({ dried, target: { ...target, ...strength } })).toThrow(
        ModelRangeError,
      );
    }
    expect(() => syrupFromDried({ dried, target: { ...target, massG: -1 } })).toThrow(
      expect.objectContaining({ parameter: 'massG' }),
    );
  });
});

describe('a swap of syrup and powder', () => {
  it('adds the water the syrup brought', () => {
    expect(swapSyrupForDried({ syrupG: 300, syrup, dried, recipeWaterG: 100 })).toEqual({
      driedG: expect.closeTo(250.9375, 9),
      waterChangeG: expect.closeTo(49.0625, 9),
      recipeWaterG: expect.closeTo(149.0625, 9),
    });
  });

  it('takes off the water the syrup brings', () => {
    const { driedG } = { driedG: (300 * 0.803) / 0.96 };
    expect(swapDriedForSyrup({ driedG, syrup, dried, recipeWaterG: 100 })).toEqual({
      syrupG: expect.closeTo(300, 9),
      waterChangeG: expect.closeTo(driedG - 300, 9),
      recipeWaterG: expect.closeTo(driedG - 200, 9),
    });
  });

  it('is none where the recipe has less water than must come out', () => {
    expect(swapDriedForSyrup({ driedG: 100, syrup, dried, recipeWaterG: 10 })).toEqual({
      kind: 'none',
      reason: 'too-little-water',
      waterShortG: expect.closeTo(100 * (0.96 / 0.803 - 1) - 10, 9),
    });
    // A powder that is wetter than the syrup, by mistake or by a wet store, does the same.
    const damp = { drySolidsMassFraction: 0.7 };
    expect(swapSyrupForDried({ syrupG: 100, syrup, dried: damp, recipeWaterG: 0 })).toMatchObject({
      reason: 'too-little-water',
    });
  });

  it('leaves exactly no water where that is what the recipe has', () => {
    const recipeWaterG = 100 * (0.96 / 0.803 - 1);
    expect(swapDriedForSyrup({ driedG: 100, syrup, dried, recipeWaterG })).toMatchObject({
      recipeWaterG: expect.closeTo(0, 9),
    });
    expect(swapDriedForSyrup({ driedG: 0, syrup, dried, recipeWaterG: 0 })).toEqual({
      syrupG: 0,
      waterChangeG: 0,
      recipeWaterG: 0,
    });
  });

  it('refuses less than nothing, by name', () => {
    const ask = { syrup, dried, recipeWaterG: 1 };
    for (const received of [-1, Number.NaN]) {
      expect(() => swapSyrupForDried({ ...ask, syrupG: received })).toThrow(
        expect.objectContaining({ parameter: 'syrupG', received }),
      );
      expect(() => swapDriedForSyrup({ ...ask, driedG: received })).toThrow(
        expect.objectContaining({ parameter: 'driedG', received }),
      );
      expect(() => swapDriedForSyrup({ ...ask, driedG: 1, recipeWaterG: received })).toThrow(
        expect.objectContaining({ parameter: 'recipeWaterG', received }),
      );
    }
    const percent = { drySolidsMassFraction: 96 };
    expect(() => swapSyrupForDried({ ...ask, dried: percent, syrupG: 1 })).toThrow(/percentage/);
    expect(() => swapSyrupForDried({ ...ask, syrup: percent, syrupG: 1 })).toThrow(/percentage/);
    expect(() => swapDriedForSyrup({ ...ask, dried: percent, driedG: 1 })).toThrow(/percentage/);
    expect(() => swapDriedForSyrup({ ...ask, syrup: percent, driedG: 1 })).toThrow(/percentage/);
  });
});

describe('invertSyrup', () => {
  it('takes up a twentieth of water when all of it splits', () => {
    expect(invertSyrup({ sucroseG: 1_000, invertedFraction: 1 })).toEqual({
      sucroseG: 0,
      glucoseG: expect.closeTo(526.315, 9),
      fructoseG: expect.closeTo(526.315, 9),
      waterConsumedG: expect.closeTo(52.63, 9),
      drySolidsG: expect.closeTo(1_052.63, 9),
      reducingSugarsMassFractionOfDrySolids: 1,
    });
  });

  it('counts reducing sugars on the solids that came of it', () => {
    const { reducingSugarsMassFractionOfDrySolids: share } = invertSyrup({
      sucroseG: 10,
      invertedFraction: 0.5,
    });
    expect(share).toBeCloseTo((1.05263 * 0.5) / (1 + 0.05263 * 0.5), 12);
    expect(
      invertSyrup({ sucroseG: 10, invertedFraction: 0 }).reducingSugarsMassFractionOfDrySolids,
    ).toBe(0);
  });

  it('refuses a percentage, and no sugar', () => {
    expect(() => invertSyrup({ sucroseG: 1, invertedFraction: 50 })).toThrow(/percentage/);
    expect(() => invertSyrup({ sucroseG: 0, invertedFraction: 0.5 })).toThrow(ModelRangeError);
    expect(() => invertSyrup({ sucroseG: Number.NaN, invertedFraction: 0.5 })).toThrow(
      ModelRangeError,
    );
  });
});

describe('syrupDefinitions', () => {
  const names = (figures: Parameters<typeof syrupDefinitions>[0]) =>
    syrupDefinitions(figures).meets.map(({ id, rule }) => `${id}, ${rule}`);
  const codex = 'CXS 212-1999';
  const eu = 'Directive 2001/111/EC';

  it.each([
    [{ drySolidsMassFraction: 0.8, dextroseEquivalent: 42 }, 'glucose-syrup'],
    [{ drySolidsMassFraction: 0.7, dextroseEquivalent: 20 }, 'glucose-syrup'],
    [{ drySolidsMassFraction: 0.93, dextroseEquivalent: 20, dried: true }, 'dried-glucose-syrup'],
  ])('names %j %s by both rules', (figures, id) => {
    expect(names(figures)).toEqual([`${id}, ${codex}`, `${id}, ${eu}`]);
  });

  it.each([
    [{ drySolidsMassFraction: 0.69, dextroseEquivalent: 42 }],
    [{ drySolidsMassFraction: 0.92, dextroseEquivalent: 42, dried: true }],
    [{ drySolidsMassFraction: 0.8 }],
    [{ drySolidsMassFraction: 0.8, invertMassFractionOfDrySolids: 0.03 }],
    [{ drySolidsMassFraction: 0.61, invertMassFractionOfDrySolids: 0.4 }],
    [{ drySolidsMassFraction: 0.95, glucoseMassFractionOfDrySolids: 1 }],
  ])('has no name for %j', (figures) => {
    expect(names(figures)).toEqual([]);
  });

  it('calls it maltodextrin under 20, powder or not', () => {
    for (const dried of [true, false]) {
      const figures = { drySolidsMassFraction: 0.95, dextroseEquivalent: 19.9, dried };
      expect(names(figures)).toEqual(['maltodextrin, 21 CFR 184.1444']);
    }
  });

  it('tells the two dextroses apart by their crystal water', () => {
    const pure = { dried: true, glucoseMassFractionOfDrySolids: 0.995, dextroseEquivalent: 99.6 };
    expect(names({ ...pure, drySolidsMassFraction: 0.91 })).toEqual([
      `dextrose-monohydrate, ${codex}`,
    ]);
    expect(names({ ...pure, drySolidsMassFraction: 0.98 })).toContain(
      `dextrose-anhydrous, ${codex}`,
    );
    expect(names({ ...pure, drySolidsMassFraction: 0.98 })).not.toContain(
      `dextrose-monohydrate, ${codex}`,
    );
    expect(
      names({ ...pure, drySolidsMassFraction: 0.91, glucoseMassFractionOfDrySolids: 0.99 }),
    ).toEqual([]);
  });

  it('tells invert sugar solution from syrup at half', () => {
    const of = (invertMassFractionOfDrySolids: number) =>
      names({ drySolidsMassFraction: 0.62, invertMassFractionOfDrySolids });
    expect(of(0.031)).toEqual([`invert-sugar-solution, ${eu}`]);
    expect(of(0.5)).toEqual([`invert-sugar-solution, ${eu}`]);
    expect(of(0.501)).toEqual([`invert-sugar-syrup, ${eu}`]);
  });

  it('refuses what is no figure', () => {
    const drySolidsMassFraction = 0.8;
    for (const wrong of [
      { drySolidsMassFraction: 80 },
      { drySolidsMassFraction, dextroseEquivalent: 0 },
      { drySolidsMassFraction, dextroseEquivalent: 101 },
      { drySolidsMassFraction, glucoseMassFractionOfDrySolids: 99.5 },
      { drySolidsMassFraction, invertMassFractionOfDrySolids: -0.1 },
      { drySolidsMassFraction, dextroseEquivalent: Number.NaN },
    ]) {
      expect(() => syrupDefinitions(wrong)).toThrow(ModelRangeError);
    }
  });
});

describe('dextroseCrystallises', () => {
  const at = (dextroseEquivalent: number) =>
    dextroseCrystallises({ drySolidsMassFraction: 0.8, dextroseEquivalent });

  it('leaves a usual syrup under what its water dissolves', () => {
    const { supersaturation, band, aboveSolubility, byPractice, warnings } = at(42);
    // 14.8 g of dextrose on 20 g of water, which alone holds 18.3 g.
    expect(supersaturation).toBeCloseTo((0.148 / 0.2) * (0.522 / 0.478), 12);
    expect(band[0]).toBeCloseTo(supersaturation * (0.165 / 0.185), 12);
    expect(band[1]).toBeCloseTo(supersaturation * (0.205 / 0.185), 12);
    expect(aboveSolubility).toBe(false);
    expect(byPractice).toBe('stays-clear');
    expect(warnings).toEqual([]);
  });

  it('follows the rule of the trade between 60 and 63', () => {
    expect(at(60).byPractice).toBe('stays-clear');
    expect(at(60.1).byPractice).toBe('may-crystallise');
    expect(at(63).byPractice).toBe('may-crystallise');
    expect(at(63.1).byPractice).toBe('crystallises');
    expect(at(60).supersaturation).toBeGreaterThan(1.5);
    expect(at(60).aboveSolubility).toBe(true);
  });

  it('tells a high-maltose syrup from a regular one, and a blend from both', () => {
    const ask = { drySolidsMassFraction: 0.8, dextroseEquivalent: 43 };
    const maltose = dextroseCrystallises({ ...ask, conversion: 'high-maltose' });
    const blend = { dp1: 0.325, dp2: 0.115, dp3: 0.096, dp4plus: 0.464 };
    const blended = dextroseCrystallises({ ...ask, profile: blend });
    expect(maltose.supersaturation).toBeLessThan(0.3);
    expect(blended.supersaturation).toBeCloseTo((4 * 0.325 * 0.522) / 0.478, 12);
    const glucose = { dp1: 1, dp2: 0, dp3: 0, dp4plus: 0 };
    const pure = dextroseCrystallises({ ...ask, profile: glucose });
    expect(pure.band[1]).toBe(pure.supersaturation);
    const none = { dp1: 0.01, dp2: 0.2, dp3: 0.2, dp4plus: 0.59 };
    expect(dextroseCrystallises({ ...ask, profile: none }).band[0]).toBe(0);
  });

  it('warns of other strengths, and of syrups nobody printed', () => {
    const { warnings } = dextroseCrystallises({
      drySolidsMassFraction: 0.9,
      dextroseEquivalent: 25,
    });
    expect(warnings.map(({ parameter }) => parameter)).toEqual([
      'drySolidsMassFraction',
      'dextroseEquivalent',
    ]);
  });

  it('refuses no water, no syrup, and shares of no whole', () => {
    const ask = { drySolidsMassFraction: 0.8, dextroseEquivalent: 42 };
    const broken = { dp1: 0.5, dp2: 0.1, dp3: 0.1, dp4plus: 0.1 };
    for (const wrong of [
      { ...ask, drySolidsMassFraction: 1 },
      { ...ask, dextroseEquivalent: 0 },
      { ...ask, dextroseEquivalent: 101 },
      { ...ask, conversion: 'enzyme' as const },
      { ...ask, profile: broken },
    ]) {
      expect(() => dextroseCrystallises(wrong)).toThrow(ModelRangeError);
    }
  });
});
