import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { blendProfiles } from './blend-profiles.js';
import { blendThreeSyrups } from './blend-three-syrups.js';
import { blendTwoSyrups } from './blend-two-syrups.js';
import { mixSyrups } from './mix-syrups.js';

const syrup = { drySolidsMassFraction: 0.803, dextroseEquivalent: 42 };
const dextrose = { drySolidsMassFraction: 0.91, dextroseEquivalent: 100 };
const maltodextrin = { drySolidsMassFraction: 0.95, dextroseEquivalent: 10 };
const target = { massG: 1_000, drySolidsMassFraction: 0.8, dextroseEquivalent: 52 };

describe('blendTwoSyrups', () => {
  it('makes a syrup of 52 from one of 42 and dextrose', () => {
    const blend = blendTwoSyrups({ a: syrup, b: dextrose, target });
    expect(blend).toEqual({
      aG: expect.closeTo(824.494, 3),
      bG: expect.closeTo(151.573, 3),
      waterG: expect.closeTo(23.933, 3),
    });
  });

  it('says which way the target is out of reach', () => {
    expect(blendTwoSyrups({ a: syrup, b: maltodextrin, target })).toEqual({
      kind: 'none',
      reason: 'target-above-both',
      dextroseEquivalents: [10, 42],
      missing: 'higher-dextrose-equivalent',
    });
    expect(
      blendTwoSyrups({ a: dextrose, b: syrup, target: { ...target, dextroseEquivalent: 41.9 } }),
    ).toEqual({
      kind: 'none',
      reason: 'target-below-both',
      dextroseEquivalents: [42, 100],
      missing: 'lower-dextrose-equivalent',
    });
  });

  it('blends nothing with itself, even to itself', () => {
    const none = { kind: 'none', reason: 'same-dextrose-equivalent' };
    const itself = { ...target, dextroseEquivalent: 42 };
    expect(blendTwoSyrups({ a: syrup, b: syrup, target: itself })).toMatchObject(none);
    const drier = { ...syrup, drySolidsMassFraction: 0.96 };
    expect(blendTwoSyrups({ a: syrup, b: drier, target: itself })).toEqual({
      ...none,
      dextroseEquivalents: [42, 42],
      missing: 'another-dextrose-equivalent',
    });
  });

  it('takes no water out, and says how much that would be', () => {
    const wet = { ...syrup, drySolidsMassFraction: 0.7 };
    expect(
      blendTwoSyrups({ a: wet, b: dextrose, target: { ...target, drySolidsMassFraction: 0.85 } }),
    ).toEqual({
      kind: 'none',
      reason: 'too-dilute',
      missing: 'drier-part',
      // 48/58 of the solids at 0.7 and 10/58 at 0.91.
      highestDrySolidsMassFraction: expect.closeTo(1 / (48 / 58 / 0.7 + 10 / 58 / 0.91), 12),
      waterToRemoveG: expect.closeTo(850 * (48 / 58 / 0.7 + 10 / 58 / 0.91) - 1_000, 9),
    });
  });

  it('needs one part alone where the target is that part, with or without water', () => {
    expect(blendTwoSyrups({ a: syrup, b: dextrose, target: { ...syrup, massG: 100 } })).toEqual({
      aG: expect.closeTo(100, 9),
      bG: 0,
      waterG: expect.closeTo(0, 9),
    });
    const thinned = { massG: 100, drySolidsMassFraction: 0.455, dextroseEquivalent: 100 };
    expect(blendTwoSyrups({ a: syrup, b: dextrose, target: thinned })).toEqual({
      aG: 0,
      bG: expect.closeTo(50, 9),
      waterG: expect.closeTo(50, 9),
    });
    const nothing = blendTwoSyrups({ a: syrup, b: dextrose, target: { ...target, massG: 0 } });
    expect(nothing).toEqual({ aG: 0, bG: 0, waterG: 0 });
  });

  it('takes the last digits of a blend without water for none', () => {
    const parts = { a: { ...syrup, drySolidsMassFraction: 0.7 }, b: dextrose };
    const limit = blendTwoSyrups({ ...parts, target: { ...target, drySolidsMassFraction: 0.9 } });
    if (!('reason' in limit) || limit.reason !== 'too-dilute') throw new Error('should be none');
    const { highestDrySolidsMassFraction: drySolidsMassFraction } = limit;
    const blend = blendTwoSyrups({ ...parts, target: { ...target, drySolidsMassFraction } });
    expect(blend).toMatchObject({ waterG: expect.closeTo(0, 9) });
  });

  it.each([0, 101, Number.NaN])('refuses a dextrose equivalent of %d', (dextroseEquivalent) => {
    const refused = expect.objectContaining({ parameter: 'dextroseEquivalent', limits: [1, 100] });
    for (const ask of [
      { a: { ...syrup, dextroseEquivalent }, b: dextrose, target },
      { a: dextrose, b: { ...syrup, dextroseEquivalent }, target },
      { a: syrup, b: dextrose, target: { ...target, dextroseEquivalent } },
    ]) {
      expect(() => blendTwoSyrups(ask)).toThrow(refused);
    }
  });

  it('refuses a figure the conversion does not reach, and a percentage', () => {
    const odd = { ...syrup, dextroseEquivalent: 64, conversion: 'acid' as const };
    expect(() => blendTwoSyrups({ a: odd, b: dextrose, target })).toThrow(
      expect.objectContaining({ limits: [20, 63] }),
    );
    const percent = { ...syrup, drySolidsMassFraction: 80.3 };
    expect(() => blendTwoSyrups({ a: percent, b: dextrose, target })).toThrow(/percentage/);
    expect(() => blendTwoSyrups({ a: syrup, b: percent, target })).toThrow(ModelRangeError);
    for (const massG of [-1, Number.NaN]) {
      expect(() => blendTwoSyrups({ a: syrup, b: dextrose, target: { ...target, massG } })).toThrow(
        ModelRangeError,
      );
    }
  });
});

describe('blendThreeSyrups', () => {
  const three = { a: syrup, b: dextrose, c: maltodextrin };

  it('fixes mass, solids and dextrose equivalent at once', () => {
    const wanted = { massG: 1_000, drySolidsMassFraction: 0.83, dextroseEquivalent: 42 };
    const blend = blendThreeSyrups({ ...three, target: wanted });
    if ('reason' in blend) throw new Error(blend.reason);
    const made = mixSyrups([
      { ...syrup, massG: blend.aG },
      { ...dextrose, massG: blend.bG },
      { ...maltodextrin, massG: blend.cG },
    ]);
    expect(blend.aG).toBeCloseTo(796.043, 3);
    expect(made.massG).toBeCloseTo(1_000, 9);
    expect(made.drySolidsMassFraction).toBeCloseTo(0.83, 12);
    expect(made.dextroseEquivalent).toBeCloseTo(42, 9);
  });

  it('with water for the third is the blend of two', () => {
    const water = { drySolidsMassFraction: 0, dextroseEquivalent: 1 };
    const two = blendTwoSyrups({ a: syrup, b: dextrose, target });
    if ('reason' in two) throw new Error(two.reason);
    expect(blendThreeSyrups({ a: syrup, b: dextrose, c: water, target })).toEqual({
      aG: expect.closeTo(two.aG, 8),
      bG: expect.closeTo(two.bG, 8),
      cG: expect.closeTo(two.waterG, 8),
    });
  });

  it('has no single answer where two are alike, or one is a blend of the others', () => {
    const none = { kind: 'none', reason: 'parts-not-independent' };
    expect(blendThreeSyrups({ ...three, c: syrup, target })).toEqual(none);
    const mixed = mixSyrups([
      { ...syrup, massG: 1 },
      { ...dextrose, massG: 1 },
    ]);
    expect(blendThreeSyrups({ ...three, c: mixed, target })).toEqual(none);
  });

  it('names the part that would have to be taken out', () => {
    expect(blendThreeSyrups({ ...three, target })).toEqual({
      kind: 'none',
      reason: 'outside-the-parts',
      wouldTakeOut: ['c'],
    });
    const dry = { massG: 1_000, drySolidsMassFraction: 0.97, dextroseEquivalent: 55 };
    expect(blendThreeSyrups({ ...three, target: dry })).toMatchObject({ wouldTakeOut: ['a'] });
    const reducing = { ...target, drySolidsMassFraction: 0.9, dextroseEquivalent: 100 };
    expect(blendThreeSyrups({ ...three, target: reducing })).toMatchObject({
      wouldTakeOut: expect.arrayContaining(['c']),
    });
  });

  it('refuses what is no syrup in any of the three places', () => {
    for (const place of ['a', 'b', 'c'] as const) {
      for (const wrong of [
        { ...syrup, drySolidsMassFraction: -0.1 },
        { ...syrup, drySolidsMassFraction: 1.1 },
        { ...syrup, dextroseEquivalent: 0 },
        { ...syrup, conversion: 'enzyme' as const },
      ]) {
        expect(() => blendThreeSyrups({ ...three, [place]: wrong, target })).toThrow(
          ModelRangeError,
        );
      }
    }
    expect(() => blendThreeSyrups({ ...three, target: { ...target, massG: -1 } })).toThrow(
      ModelRangeError,
    );
  });
});

describe('mixSyrups', () => {
  it('counts a dry part more', () => {
    const mixed = mixSyrups(
      [
        { massG: 100, drySolidsMassFraction: 0.8, dextroseEquivalent: 42 },
        { massG: 100, drySolidsMassFraction: 0.4, dextroseEquivalent: 60 },
      ],
      { waterG: 40 },
    );
    expect(mixed.massG).toBe(240);
    expect(mixed.drySolidsMassFraction).toBeCloseTo(0.5, 12);
    expect(mixed.dextroseEquivalent).toBeCloseTo(48, 12);
  });

  it('refuses nothing, and less than nothing', () => {
    expect(() => mixSyrups([])).toThrow(expect.objectContaining({ parameter: 'massG' }));
    expect(() => mixSyrups([{ ...syrup, massG: -1 }])).toThrow(ModelRangeError);
    expect(() => mixSyrups([{ ...syrup, massG: 1 }], { waterG: -1 })).toThrow(
      expect.objectContaining({ parameter: 'waterG' }),
    );
    expect(() => mixSyrups([{ ...syrup, massG: 1, dextroseEquivalent: 101 }])).toThrow(
      ModelRangeError,
    );
  });
});

describe('blendProfiles', () => {
  const acid = { dp1: 0.185, dp2: 0.139, dp3: 0.116, dp4plus: 0.56 };
  const glucose = { dp1: 1, dp2: 0, dp3: 0, dp4plus: 0 };

  it('mixes by dry solids', () => {
    const { profile } = blendProfiles([
      { profile: acid, drySolidsG: 80 },
      { profile: glucose, drySolidsG: 20 },
    ]);
    expect(profile).toEqual({
      dp1: expect.closeTo(0.348, 12),
      dp2: expect.closeTo(0.1112, 12),
      dp3: expect.closeTo(0.0928, 12),
      dp4plus: expect.closeTo(0.448, 12),
    });
  });

  it('takes a rounded profile as shares of its own sum', () => {
    const rounded = { dp1: 0.2, dp2: 0.2, dp3: 0.1, dp4plus: 0.51 };
    const { profile } = blendProfiles([{ profile: rounded, drySolidsG: 3 }]);
    expect(profile.dp4plus).toBeCloseTo(0.51 / 1.01, 12);
  });

  it('refuses shares of no whole, and no solids at all', () => {
    const broken = { ...acid, dp1: 0.3 };
    expect(() => blendProfiles([{ profile: broken, drySolidsG: 1 }])).toThrow(
      expect.objectContaining({ parameter: 'sumOfProfile' }),
    );
    for (const parts of [[], [{ profile: acid, drySolidsG: 0 }]]) {
      expect(() => blendProfiles(parts)).toThrow(
        expect.objectContaining({ parameter: 'drySolidsG' }),
      );
    }
    expect(() => blendProfiles([{ profile: acid, drySolidsG: Number.NaN }])).toThrow(
      ModelRangeError,
    );
  });
});
