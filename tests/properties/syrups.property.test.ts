import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  blendProfiles,
  blendThreeSyrups,
  blendTwoSyrups,
  CONVERSION_DEXTROSE_EQUIVALENTS,
  degreeOfPolymerisationFromMolarMass,
  dextroseCrystallises,
  dextroseEquivalentFromMolarMass,
  invertSyrup,
  ModelRangeError,
  meanDegreeOfPolymerisation,
  mixSyrups,
  molarMassFromDegreeOfPolymerisation,
  molarMassFromDextroseEquivalent,
  type Profile,
  type SyrupStrength,
  swapDriedForSyrup,
  swapSyrupForDried,
  syrupDefinitions,
  syrupFromDried,
} from 'vitrose';

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const dextroseEquivalent = number(1, 100);
const solids = number(0.1, 1);
const massG = number(0.1, 10_000);
const syrup: fc.Arbitrary<SyrupStrength> = fc.record({
  drySolidsMassFraction: solids,
  dextroseEquivalent,
});
const target = fc.record({ massG, drySolidsMassFraction: solids, dextroseEquivalent });
const weighed = fc.record({ massG, drySolidsMassFraction: solids, dextroseEquivalent });
const shares = fc
  .tuple(number(0, 1), number(0, 1), number(0, 1), number(0.01, 1))
  .map(([a, b, c, d]): Profile => {
    const sum = a + b + c + d;
    return { dp1: a / sum, dp2: b / sum, dp3: c / sum, dp4plus: d / sum };
  });

/** Solids, and solids by what they reduce, of what is weighed out: a balance kept apart from the code. */
function balance(parts: readonly (readonly [massG: number, syrup: SyrupStrength])[]) {
  let solidsG = 0;
  let reducing = 0;
  for (const [partG, part] of parts) {
    solidsG += partG * part.drySolidsMassFraction;
    reducing += partG * part.drySolidsMassFraction * part.dextroseEquivalent;
  }
  return { solidsG, reducing };
}

/** Equal to the ninth digit of the larger. */
function expectSame(a: number, b: number, scale: number): void {
  expect(Math.abs(a - b)).toBeLessThanOrEqual(1e-6 * Math.max(scale, 1e-3));
}

describe('a blend of two', () => {
  it('keeps the dry solids and what they reduce, or weighs out nothing and says why', () => {
    fc.assert(
      fc.property(syrup, syrup, target, (a, b, wanted) => {
        const blend = blendTwoSyrups({ a, b, target: wanted });
        const between =
          (a.dextroseEquivalent - wanted.dextroseEquivalent) *
            (b.dextroseEquivalent - wanted.dextroseEquivalent) <=
          0;
        if ('reason' in blend) {
          expect(blend).not.toHaveProperty('aG');
          expect(blend).not.toHaveProperty('bG');
          expect(blend).not.toHaveProperty('waterG');
          if (blend.reason === 'too-dilute') {
            expect(between).toBe(true);
            expect(blend.waterToRemoveG).toBeGreaterThan(0);
            expect(blend.highestDrySolidsMassFraction).toBeLessThan(wanted.drySolidsMassFraction);
          }
          return;
        }
        expect(between).toBe(true);
        for (const partG of Object.values(blend)) expect(partG).toBeGreaterThanOrEqual(0);
        const { solidsG, reducing } = balance([
          [blend.aG, a],
          [blend.bG, b],
        ]);
        const wantedG = wanted.massG * wanted.drySolidsMassFraction;
        expectSame(blend.aG + blend.bG + blend.waterG, wanted.massG, wanted.massG);
        expectSame(solidsG, wantedG, wanted.massG);
        expectSame(reducing, wantedG * wanted.dextroseEquivalent, 100 * wanted.massG);
      }),
    );
  });

  it('does not care which part comes first', () => {
    fc.assert(
      fc.property(syrup, syrup, target, (a, b, wanted) => {
        const one = blendTwoSyrups({ a, b, target: wanted });
        const other = blendTwoSyrups({ a: b, b: a, target: wanted });
        expect('reason' in one ? one.reason : 'blend').toBe(
          'reason' in other ? other.reason : 'blend',
        );
        if ('reason' in one || 'reason' in other) return;
        expectSame(one.aG, other.bG, wanted.massG);
        expectSame(one.bG, other.aG, wanted.massG);
      }),
    );
  });

  it('of a part with itself is none', () => {
    fc.assert(
      fc.property(syrup, target, (a, wanted) => {
        expect(blendTwoSyrups({ a, b: a, target: wanted })).toMatchObject({ kind: 'none' });
      }),
    );
  });

  it('finds back what was mixed', () => {
    fc.assert(
      fc.property(weighed, weighed, number(0, 5_000), (a, b, waterG) => {
        fc.pre(Math.abs(a.dextroseEquivalent - b.dextroseEquivalent) > 0.1);
        const mixed = mixSyrups([a, b], { waterG });
        fc.pre(mixed.drySolidsMassFraction >= 0.01);
        const blend = blendTwoSyrups({ a, b, target: mixed });
        if ('reason' in blend) throw new Error(blend.reason);
        expectSame(blend.aG, a.massG, mixed.massG);
        expectSame(blend.bG, b.massG, mixed.massG);
        expectSame(blend.waterG, waterG, mixed.massG);
      }),
    );
  });
});

describe('a blend of three', () => {
  it('keeps mass, dry solids and what they reduce, or weighs out nothing and says why', () => {
    fc.assert(
      fc.property(syrup, syrup, syrup, target, (a, b, c, wanted) => {
        const blend = blendThreeSyrups({ a, b, c, target: wanted });
        if ('reason' in blend) {
          for (const name of ['aG', 'bG', 'cG']) expect(blend).not.toHaveProperty(name);
          return;
        }
        for (const partG of Object.values(blend)) expect(partG).toBeGreaterThanOrEqual(0);
        const { solidsG, reducing } = balance([
          [blend.aG, a],
          [blend.bG, b],
          [blend.cG, c],
        ]);
        const wantedG = wanted.massG * wanted.drySolidsMassFraction;
        expectSame(blend.aG + blend.bG + blend.cG, wanted.massG, wanted.massG);
        expectSame(solidsG, wantedG, wanted.massG);
        expectSame(reducing, wantedG * wanted.dextroseEquivalent, 100 * wanted.massG);
      }),
    );
  });

  it('finds back what was mixed', () => {
    fc.assert(
      fc.property(weighed, weighed, weighed, (a, b, c) => {
        const mixed = mixSyrups([a, b, c]);
        const blend = blendThreeSyrups({ a, b, c, target: mixed });
        fc.pre(!('reason' in blend && blend.reason === 'parts-not-independent'));
        if ('reason' in blend) throw new Error(blend.reason);
        const made = mixSyrups([
          { ...a, massG: blend.aG },
          { ...b, massG: blend.bG },
          { ...c, massG: blend.cG },
        ]);
        expectSame(made.massG, mixed.massG, mixed.massG);
        expectSame(made.drySolidsMassFraction, mixed.drySolidsMassFraction, 1);
        expectSame(made.dextroseEquivalent, mixed.dextroseEquivalent, 100);
      }),
    );
  });
});

describe('syrups that are mixed', () => {
  it('lie between their parts, by dextrose equivalent and without water by strength', () => {
    fc.assert(
      fc.property(fc.array(weighed, { minLength: 1, maxLength: 5 }), (parts) => {
        const mixed = mixSyrups(parts);
        for (const key of ['dextroseEquivalent', 'drySolidsMassFraction'] as const) {
          const own = parts.map((part) => part[key]);
          expect(mixed[key]).toBeGreaterThanOrEqual(Math.min(...own) - 1e-9);
          expect(mixed[key]).toBeLessThanOrEqual(Math.max(...own) + 1e-9);
        }
      }),
    );
  });

  it('hold whole profiles, each share between those of the parts', () => {
    const part = fc.record({ profile: shares, drySolidsG: massG });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 5 }), (parts) => {
        const { profile } = blendProfiles(parts);
        const sum = profile.dp1 + profile.dp2 + profile.dp3 + profile.dp4plus;
        expect(sum).toBeCloseTo(1, 12);
        for (const chain of ['dp1', 'dp2', 'dp3', 'dp4plus'] as const) {
          const own = parts.map((one) => one.profile[chain]);
          expect(profile[chain]).toBeGreaterThanOrEqual(Math.min(...own) - 1e-9);
          expect(profile[chain]).toBeLessThanOrEqual(Math.max(...own) + 1e-9);
        }
      }),
    );
  });
});

describe('powder and syrup', () => {
  it('hold the same solids and the same water in all, made up or swapped, and back', () => {
    fc.assert(
      fc.property(massG, solids, solids, number(0, 5_000), (syrupG, s, d, recipeWaterG) => {
        const [thick, dry] = [{ drySolidsMassFraction: s }, { drySolidsMassFraction: d }];
        const there = swapSyrupForDried({ syrupG, syrup: thick, dried: dry, recipeWaterG });
        const made = syrupFromDried({ dried: dry, target: { ...thick, massG: syrupG } });
        expect('reason' in made).toBe(s > d * (1 + 1e-9));
        if ('reason' in there) {
          expect(there.waterShortG).toBeGreaterThan(0);
          expect(there).not.toHaveProperty('driedG');
          return;
        }
        expectSame(there.driedG * d, syrupG * s, syrupG);
        expectSame(there.driedG + there.recipeWaterG, syrupG + recipeWaterG, syrupG + recipeWaterG);
        const back = swapDriedForSyrup({
          driedG: there.driedG,
          dried: dry,
          syrup: thick,
          recipeWaterG: there.recipeWaterG,
        });
        if ('reason' in back) throw new Error(back.reason);
        expectSame(back.syrupG, syrupG, syrupG);
        expectSame(back.recipeWaterG, recipeWaterG, syrupG + recipeWaterG);
      }),
    );
  });
});

describe('inversion', () => {
  it('keeps the mass of sugar and water together, and reduces more the further it goes', () => {
    fc.assert(
      fc.property(massG, number(0, 1), number(0, 1), (sucroseG, x, y) => {
        const of = (invertedFraction: number) => invertSyrup({ sucroseG, invertedFraction });
        const { sucroseG: left, glucoseG, fructoseG, waterConsumedG, drySolidsG } = of(x);
        expectSame(left + glucoseG + fructoseG, sucroseG + waterConsumedG, sucroseG);
        expectSame(drySolidsG, sucroseG + waterConsumedG, sucroseG);
        const share = (f: number) => of(f).reducingSugarsMassFractionOfDrySolids;
        if (Math.abs(x - y) > 1e-9) {
          expect(share(Math.max(x, y))).toBeGreaterThan(share(Math.min(x, y)));
        }
      }),
    );
  });
});

describe('mean chain length', () => {
  it('goes to molar mass and dextrose equivalent and back', () => {
    fc.assert(
      fc.property(dextroseEquivalent, (de) => {
        const { molarMassGPerMol } = molarMassFromDextroseEquivalent(de);
        const { degreeOfPolymerisation } = meanDegreeOfPolymerisation({ dextroseEquivalent: de });
        expectSame(
          dextroseEquivalentFromMolarMass(molarMassGPerMol).dextroseEquivalent,
          de,
          de / 1_000,
        );
        const { molarMassGPerMol: again } = molarMassFromDegreeOfPolymerisation(
          Math.max(1, degreeOfPolymerisation),
        );
        expect(Math.abs(again - molarMassGPerMol)).toBeLessThan(1e-3);
        expect(
          Math.abs(
            degreeOfPolymerisationFromMolarMass(molarMassGPerMol).degreeOfPolymerisation -
              degreeOfPolymerisation,
          ),
        ).toBeLessThan(1e-9);
      }),
    );
  });

  it('falls as the dextrose equivalent rises, however the starch was cut, and is refused beyond', () => {
    fc.assert(
      fc.property(
        fc.constantFrom('acid' as const, 'enzyme' as const, 'high-maltose' as const),
        number(0, 1),
        number(0, 1),
        fc.double(),
        (conversion, x, y, any) => {
          const [low, high] = CONVERSION_DEXTROSE_EQUIVALENTS[conversion];
          const of = (share: number) =>
            meanDegreeOfPolymerisation({
              dextroseEquivalent: low + share * (high - low),
              conversion,
            }).degreeOfPolymerisation;
          // High maltose has one profile; beyond what its long chains can be, the mean stands still.
          expect(of(Math.max(x, y))).toBeLessThanOrEqual(of(Math.min(x, y)) + 1e-9);
          if (!(any >= low && any <= high)) {
            expect(() =>
              meanDegreeOfPolymerisation({ dextroseEquivalent: any, conversion }),
            ).toThrow(ModelRangeError);
          }
        },
      ),
    );
  });
});

describe('dextrose in a syrup', () => {
  it('stands higher over what its water holds the drier it is, and inside its band', () => {
    fc.assert(
      fc.property(dextroseEquivalent, number(0.05, 0.95), number(0.05, 0.95), (de, x, y) => {
        fc.pre(Math.abs(x - y) > 1e-6);
        const of = (drySolidsMassFraction: number) =>
          dextroseCrystallises({ drySolidsMassFraction, dextroseEquivalent: de });
        const [thin, thick] = [of(Math.min(x, y)), of(Math.max(x, y))];
        expect(thick.supersaturation).toBeGreaterThan(thin.supersaturation);
        for (const { supersaturation, band, aboveSolubility } of [thin, thick]) {
          expect(band[0]).toBeLessThanOrEqual(supersaturation);
          expect(band[1]).toBeGreaterThanOrEqual(supersaturation);
          expect(aboveSolubility).toBe(supersaturation > 1);
        }
      }),
    );
  });
});

it('a starch product is never both a glucose syrup and a maltodextrin', () => {
  fc.assert(
    fc.property(solids, dextroseEquivalent, fc.boolean(), (drySolidsMassFraction, de, dried) => {
      const { meets } = syrupDefinitions({
        drySolidsMassFraction,
        dextroseEquivalent: de,
        dried,
      });
      const ids = meets.map(({ id }) => id);
      expect(ids.includes('maltodextrin')).toBe(de < 20);
      const isSyrup = ids.includes('glucose-syrup') || ids.includes('dried-glucose-syrup');
      expect(isSyrup).toBe(de >= 20 && drySolidsMassFraction >= (dried ? 0.93 : 0.7));
    }),
  );
});

it('refuses what is no syrup, wherever it stands', () => {
  const good = { drySolidsMassFraction: 0.8, dextroseEquivalent: 42 };
  const wanted = { ...good, massG: 1 };
  const wrong = fc.oneof(
    fc.constantFrom(0, 101, Number.NaN, Number.POSITIVE_INFINITY, -1).map((de) => ({
      ...good,
      dextroseEquivalent: de,
    })),
    fc.constantFrom(-0.1, 1.01, 80, Number.NaN).map((drySolidsMassFraction) => ({
      ...good,
      drySolidsMassFraction,
    })),
    fc.constant({ ...good, dextroseEquivalent: 70, conversion: 'acid' as const }),
  );
  fc.assert(
    fc.property(wrong, fc.constantFrom('a', 'b', 'c', 'target'), (bad, place) => {
      const parts = { a: good, b: good, c: good, target: wanted };
      const ask = { ...parts, [place]: { ...parts[place as 'a'], ...bad } };
      expect(() => blendThreeSyrups(ask)).toThrow(ModelRangeError);
      if (place !== 'c') expect(() => blendTwoSyrups(ask)).toThrow(ModelRangeError);
      expect(() => mixSyrups([{ ...bad, massG: 1 }])).toThrow(ModelRangeError);
      expect(() => dextroseCrystallises(bad)).toThrow(ModelRangeError);
    }),
  );
});
