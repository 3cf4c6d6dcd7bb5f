import { describe, expect, it } from 'vitest';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { dextroseEquivalentFromProfile } from './dextrose-equivalent.js';
import { molarMassFromDextroseEquivalent, molarMassFromProfile } from './molar-mass.js';
import { profileFromDextroseEquivalent } from './profile.js';
import { THEORY_REDUCING_ENDS } from './reducing-ends.js';
import { typicalProfile } from './typical-profile.js';

const glucose = { dp1: 1, dp2: 0, dp3: 0, dp4plus: 0 };

describe('profileFromDextroseEquivalent', () => {
  it('is halfway between two printed syrups halfway between their figures', () => {
    const { dp1 } = profileFromDextroseEquivalent(36, { conversion: 'acid' }).profile;
    expect(dp1).toBeCloseTo((0.1 + 0.185) / 2, 12);
  });

  it('tells two syrups of one figure apart by how they were cut', () => {
    const of = (conversion: 'acid' | 'high-maltose') =>
      profileFromDextroseEquivalent(43, { conversion }).profile.dp1;
    expect(of('acid')).toBeGreaterThan(3 * of('high-maltose'));
  });

  it.each([
    ['acid', 64],
    ['acid', 19],
    ['enzyme', 44],
    ['enzyme', 98],
    ['high-maltose', 39],
    ['high-maltose', 51],
  ] as const)('names the range %s cannot leave: %d', (conversion, de) => {
    expect(() => profileFromDextroseEquivalent(de, { conversion })).toThrow(/must lie between/);
  });

  it('warns below the printed acid syrups', () => {
    const { warnings } = profileFromDextroseEquivalent(25, { conversion: 'acid' });
    expect(warnings).toHaveLength(1);
    expect(profileFromDextroseEquivalent(30, { conversion: 'acid' }).warnings).toEqual([]);
  });

  it('refuses a way of cutting nobody knows', () => {
    expect(() => profileFromDextroseEquivalent(42, { conversion: 'toString' as 'acid' })).toThrow(
      ModelRangeError,
    );
  });
});

describe('typicalProfile', () => {
  it('is the usual acid syrup at 42, and glucose at 100', () => {
    const acid = profileFromDextroseEquivalent(42, { conversion: 'acid' });
    expect(typicalProfile(42).profile).toEqual(acid.profile);
    expect(typicalProfile(100).profile).toEqual(glucose);
  });

  it('is almost all long chains at 1, with a warning', () => {
    const { profile, warnings } = typicalProfile(1);
    expect(profile.dp4plus).toBeGreaterThan(0.99);
    expect(warnings).toHaveLength(1);
  });
});

describe('dextroseEquivalentFromProfile', () => {
  it.each(['acid', 'enzyme', 'high-maltose'] as const)(
    'is 100 for glucose, cut by %s',
    (conversion) => {
      expect(dextroseEquivalentFromProfile(glucose, { conversion }).dextroseEquivalent).toBe(100);
    },
  );

  it('refuses shares that are not those of one whole', () => {
    for (const profile of [
      { ...glucose, dp2: 0.1 },
      { ...glucose, dp1: 0.5 },
      { dp1: 1.5, dp2: -0.5, dp3: 0, dp4plus: 0 },
      { ...glucose, dp3: Number.NaN },
    ]) {
      expect(() => dextroseEquivalentFromProfile(profile, { conversion: 'acid' })).toThrow(
        ModelRangeError,
      );
    }
  });
});

describe('molar mass', () => {
  it('of glucose is that of glucose, both ways', () => {
    expect(molarMassFromDextroseEquivalent(100).molarMassGPerMol).toBeCloseTo(180.156, 9);
    const known = molarMassFromProfile({ profile: glucose, dextroseEquivalent: 100 });
    expect(known.molarMassGPerMol).toBeCloseTo(180.156, 9);
  });

  it('warns where no printed syrup lies near, and refuses no syrup at all', () => {
    expect(molarMassFromDextroseEquivalent(10).warnings).toHaveLength(1);
    for (const de of [0, 101, Number.NaN]) {
      expect(() => molarMassFromDextroseEquivalent(de)).toThrow(ModelRangeError);
    }
  });
});

it('knows one reducing end a chain: dextrose over the chain, by molar mass', () => {
  for (const [index, end] of THEORY_REDUCING_ENDS.ends.entries()) {
    expect(end).toBeCloseTo((100 * 180.156) / (162.1406 * (index + 1) + 18.0153), 2);
  }
});
