import { describe, expect, it } from 'vitest';
import { dextroseEquivalentFromProfile } from './dextrose-equivalent.js';
import { molarMassFromDextroseEquivalent, molarMassFromProfile } from './molar-mass.js';
import { profileFromDextroseEquivalent } from './profile.js';
import type { Conversion, Profile } from './types.js';
import { typicalProfile } from './typical-profile.js';

const glucose = { dp1: 1, dp2: 0, dp3: 0, dp4plus: 0 };
const acid = { conversion: 'acid' } as const;

/** A profile to the ninth digit. */
const near = ({ dp1, dp2, dp3, dp4plus }: Profile) => ({
  dp1: expect.closeTo(dp1, 9),
  dp2: expect.closeTo(dp2, 9),
  dp3: expect.closeTo(dp3, 9),
  dp4plus: expect.closeTo(dp4plus, 9),
});
const shares = (dp1: number, dp2: number, dp3: number, dp4plus: number) =>
  near({ dp1, dp2, dp3, dp4plus });

describe('profileFromDextroseEquivalent', () => {
  it.each([
    // Ten below the lowest printed row, on the line through it and the next.
    ['acid', 20, shares(0.1 - 0.85 / 12, 0.09 - 0.49 / 12, 0.09 - 0.26 / 12, 0.72 + 1.6 / 12)],
    ['acid', 30, shares(0.1, 0.09, 0.09, 0.72)],
    ['acid', 42, shares(0.185, 0.139, 0.116, 0.56)],
    ['acid', 57.5, shares(0.334, 0.1905, 0.131, 0.3445)],
    ['acid', 63, shares(0.3912, 0.2114, 0.1288, 0.2686)],
    ['enzyme', 45, shares(0.05, 0.5, 0.2, 0.25)],
    ['enzyme', 55, shares(0.22, 0.425, 0.155, 0.2)],
    ['enzyme', 81, shares(0.675, 0.185, 0.055, 0.085)],
    ['enzyme', 97, shares(0.96, 0.02, 0, 0.02)],
    ['high-maltose', 40, shares(0.055, 0.462, 0.123, 0.36)],
    ['high-maltose', 50, shares(0.055, 0.462, 0.123, 0.36)],
  ] as const)(
    'follows the printed rows of %s at %d',
    (conversion, dextroseEquivalent, expected) => {
      expect(profileFromDextroseEquivalent(dextroseEquivalent, { conversion }).profile).toEqual(
        expected,
      );
    },
  );

  it.each([
    ['acid', [20, 63]],
    ['enzyme', [45, 97]],
    ['high-maltose', [40, 50]],
  ] as const)('refuses what %s cannot reach', (conversion, limits) => {
    for (const received of [limits[0] - 0.1, limits[1] + 0.1]) {
      expect(() => profileFromDextroseEquivalent(received, { conversion })).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'dextroseEquivalent',
          received,
          limits,
        }),
      );
    }
  });

  it('warns of acid syrups below the printed ones, and of no others', () => {
    expect(profileFromDextroseEquivalent(29, acid).warnings).toEqual([
      {
        code: 'outside-tested-range',
        parameter: 'dextroseEquivalent',
        value: 29,
        limits: [30, 63],
      },
    ]);
    expect(profileFromDextroseEquivalent(63, acid).warnings).toEqual([]);
    expect(profileFromDextroseEquivalent(97, { conversion: 'enzyme' }).warnings).toEqual([]);
  });
});

describe('typicalProfile', () => {
  it.each([
    // Halfway from whole starch to the thinnest acid syrup.
    [10, shares(0.175 / 12, 0.295 / 12, 0.41 / 12, 0.5 + 0.36 + 0.8 / 12)],
    [20, shares(0.1 - 0.85 / 12, 0.09 - 0.49 / 12, 0.09 - 0.26 / 12, 0.72 + 1.6 / 12)],
    [63, shares(0.3912, 0.2114, 0.1288, 0.2686)],
    // Halfway from the furthest acid syrup to the furthest enzyme syrup, and from there to glucose.
    [80, shares(0.6756, 0.1157, 0.0644, 0.1443)],
    [97, shares(0.96, 0.02, 0, 0.02)],
    [98.5, shares(0.98, 0.01, 0, 0.01)],
  ] as const)('at %d is a blend of its neighbours', (dextroseEquivalent, expected) => {
    expect(typicalProfile(dextroseEquivalent).profile).toEqual(expected);
  });

  it('warns below the printed syrups and refuses what is no syrup', () => {
    expect(typicalProfile(29).warnings).toEqual([
      {
        code: 'outside-tested-range',
        parameter: 'dextroseEquivalent',
        value: 29,
        limits: [30, 100],
      },
    ]);
    expect(typicalProfile(30).warnings).toEqual([]);
    for (const received of [0.9, 100.1]) {
      expect(() => typicalProfile(received)).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'dextroseEquivalent',
          received,
          limits: [1, 100],
        }),
      );
    }
  });
});

describe('dextroseEquivalentFromProfile', () => {
  const profile = { dp1: 0.36, dp2: 0.2, dp3: 0.13, dp4plus: 0.31 };

  it.each([
    // 36 + 11.6 + 5.135 of short chains, 31 % of long ones.
    ['acid', 55.215 / 0.9194],
    ['enzyme', 52.735 + 0.13 * 31],
    ['high-maltose', 52.735 + 0.13 * 31],
  ] as const)('counts long chains by how %s left them', (conversion, expected) => {
    const { dextroseEquivalent, warnings } = dextroseEquivalentFromProfile(profile, { conversion });
    expect(dextroseEquivalent).toBeCloseTo(expected, 9);
    expect(warnings).toEqual([]);
  });

  it.each([
    ['acid', [20, 63]],
    ['enzyme', [40, 97]],
    ['high-maltose', [40, 97]],
  ] as const)('warns beyond the syrups its fit of %s rests on', (conversion, limits) => {
    const { warnings } = dextroseEquivalentFromProfile(glucose, { conversion });
    expect(warnings).toEqual([
      { code: 'outside-tested-range', parameter: 'dextroseEquivalent', value: 100, limits },
    ]);
  });

  it('takes shares rounded to whole per cents, and no worse', () => {
    for (const dp1 of [0.98, 1]) {
      expect(() => dextroseEquivalentFromProfile({ ...glucose, dp1 }, acid)).not.toThrow();
    }
    expect(() => dextroseEquivalentFromProfile({ ...glucose, dp2: 0.02 }, acid)).not.toThrow();
    for (const [worse, received] of [
      [{ ...glucose, dp1: 0.97 }, 0.97],
      [{ ...glucose, dp2: 0.03 }, 1.03],
    ] as const) {
      expect(() => dextroseEquivalentFromProfile(worse, acid)).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'sumOfProfile',
          received,
          limits: [0.98, 1.02],
        }),
      );
    }
  });

  it.each(['dp1', 'dp2', 'dp3', 'dp4plus'])('refuses a %s that is no share', (chain) => {
    for (const received of [-0.1, 1.1]) {
      expect(() => dextroseEquivalentFromProfile({ ...glucose, [chain]: received }, acid)).toThrow(
        expect.objectContaining({
          code: 'outside-range',
          parameter: 'shareOfProfile',
          received,
          limits: [0, 1],
        }),
      );
    }
  });

  it('refuses a way of cutting nobody knows', () => {
    const conversion = 'scissors' as Conversion;
    const refusal = { code: 'unknown-name', parameter: 'conversion', received: 'scissors' };
    const message = expect.stringContaining('No starch syrup is cut this way');
    for (const ask of [
      () => dextroseEquivalentFromProfile(glucose, { conversion }),
      () => profileFromDextroseEquivalent(42, { conversion }),
    ]) {
      expect(ask).toThrow(expect.objectContaining({ ...refusal, message }));
    }
  });
});

describe('the molar mass of a syrup', () => {
  const profile = { dp1: 0.1, dp2: 0.1, dp3: 0.1, dp4plus: 0.7 };

  it.each([
    // 18.834 by the short chains; the copper method counts 19.75 of them, long ones nine tenths.
    [30, 18.834 + 0.9 * 10.25],
    // Long chains have no fewer than 6 ends in a hundred and no more than 25.
    [20, 18.834 + 6 * 0.7],
    [60, 18.834 + 25 * 0.7],
  ])('at DE %d counts the ends of its chains', (dextroseEquivalent, ends) => {
    const { molarMassGPerMol } = molarMassFromProfile({ profile, dextroseEquivalent });
    expect(molarMassGPerMol).toBeCloseTo(18_015.6 / ends, 9);
  });

  it('refuses and warns alike by profile and without', () => {
    for (const ask of [
      molarMassFromDextroseEquivalent,
      (dextroseEquivalent: number) => molarMassFromProfile({ profile, dextroseEquivalent }),
    ]) {
      for (const received of [0.9, 100.1]) {
        expect(() => ask(received)).toThrow(
          expect.objectContaining({
            code: 'outside-range',
            parameter: 'dextroseEquivalent',
            received,
            limits: [1, 100],
          }),
        );
      }
      expect(ask(29).warnings).toEqual([
        {
          code: 'outside-tested-range',
          parameter: 'dextroseEquivalent',
          value: 29,
          limits: [30, 100],
        },
      ]);
      expect(ask(30).warnings).toEqual([]);
      expect(ask(100).warnings).toEqual([]);
    }
    expect(() =>
      molarMassFromProfile({ profile: { ...profile, dp1: 0.2 }, dextroseEquivalent: 30 }),
    ).toThrow(expect.objectContaining({ parameter: 'sumOfProfile' }));
  });
});
