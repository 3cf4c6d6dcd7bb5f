import {
  syrupDeFromProfileChecksTable,
  syrupMolarMassTable,
  syrupProfilesDetailedTable,
  syrupProfilesTable,
} from '@vitrose/evidence';
import { describe, expect, it } from 'vitest';
import {
  boilingPoint,
  dextroseEquivalentFromProfile,
  type Mixture,
  molarMassFromDextroseEquivalent,
  molarMassFromProfile,
  type Profile,
  profileFromDextroseEquivalent,
} from 'vitrose';

type Row = {
  readonly id: string;
  readonly conversion: 'acid' | 'enzyme' | 'high-maltose';
  readonly dextroseEquivalent: number;
  readonly profile: Profile;
};

/** Every printed profile in four shares. */
const PROFILES: readonly Row[] = [
  ...syrupProfilesTable.rows.map((row) => ({
    ...row,
    profile: {
      dp1: row.dp1Percent / 100,
      dp2: row.dp2Percent / 100,
      dp3: row.dp3Percent / 100,
      dp4plus: row.dp4PlusPercent / 100,
    },
  })),
  ...syrupProfilesDetailedTable.rows.map((row) => ({
    ...row,
    profile: {
      dp1: row.dp1Percent / 100,
      dp2: row.dp2Percent / 100,
      dp3: row.dp3Percent / 100,
      dp4plus: 1 - (row.dp1Percent + row.dp2Percent + row.dp3Percent) / 100,
    },
  })),
];

function printed(id: string): Row {
  const row = PROFILES.find((candidate) => candidate.id === id);
  if (row === undefined) throw new Error(`no profile ${id}`);
  return row;
}

describe(`profileFromDextroseEquivalent against ${syrupProfilesTable.id} and ${syrupProfilesDetailedTable.id}`, () => {
  // The acid-enzyme syrup of 63 lies between the two enzyme syrups it is no kin of.
  const kept = PROFILES.filter((row) => row.id !== 'trade-acid-enzyme-63');

  it.each(kept)('gives $id within the two points makers differ by', (row) => {
    // The high-maltose syrups of both tables, 43 and 45, are of one kind under two names.
    const { profile } = profileFromDextroseEquivalent(row.dextroseEquivalent, row);
    for (const chain of ['dp1', 'dp2', 'dp3', 'dp4plus'] as const) {
      expect(Math.abs(profile[chain] - row.profile[chain]), chain).toBeLessThanOrEqual(0.02);
    }
  });
});

describe(`dextroseEquivalentFromProfile against ${syrupDeFromProfileChecksTable.id}`, () => {
  it.each(syrupDeFromProfileChecksTable.rows)('computes $id as printed', (row) => {
    const { profile, conversion } = printed(row.id);
    const { dextroseEquivalent } = dextroseEquivalentFromProfile(profile, { conversion });
    expect(Math.abs(dextroseEquivalent - row.computedDextroseEquivalent)).toBeLessThanOrEqual(0.06);
    expect(Math.abs(dextroseEquivalent - row.nominalDextroseEquivalent)).toBeLessThanOrEqual(1.3);
  });
});

/** A syrup of a printed profile, as a mass of this strength. */
function massOf(
  { profile, dextroseEquivalent }: Row,
  dissolved: number,
  given: 'de' | 'profile',
): Mixture {
  const massG = 100 * dissolved;
  return {
    waterG: 100 - massG,
    solids: [{ kind: 'saccharides', massG, dextroseEquivalent, profile, given }],
    apart: [],
    massG: 100,
    drySolidsMassFraction: dissolved,
    dissolvedMassFraction: dissolved,
  };
}

describe(`molar mass of syrups against ${syrupMolarMassTable.id}`, () => {
  // Its row counts DP4 to DP6 one by one; the four shares of a profile here do not know them.
  const NAMED = 'trade-acid-enzyme-63';

  it.each(syrupMolarMassTable.rows)('counts the molecules of $id both ways', (row) => {
    const byDe = molarMassFromDextroseEquivalent(row.dextroseEquivalent).molarMassGPerMol;
    const byProfile = molarMassFromProfile(printed(row.id)).molarMassGPerMol;
    expect(Math.abs(byDe - row.molarMassFromDeGPerMol)).toBeLessThanOrEqual(0.1);
    const differenceGPerMol = Math.abs(byProfile - row.molarMassFromProfileGPerMol);
    expect(differenceGPerMol > 2).toBe(row.id === NAMED);
    expect(differenceGPerMol).toBeLessThanOrEqual(4);
  });

  it.each(syrupMolarMassTable.rows)('boils $id by the printed difference lower', (row) => {
    for (const [dissolved, printedK] of [
      [0.7, row.boilingDifferenceAt70PercentK],
      [0.97, row.boilingDifferenceAt97PercentK],
    ] as const) {
      const of = (given: 'de' | 'profile'): number =>
        boilingPoint(massOf(printed(row.id), dissolved, given)).boilingPointC;
      const withinK = row.id === NAMED ? 0.04 : 0.02;
      expect(Math.abs(of('profile') - of('de') - printedK)).toBeLessThanOrEqual(withinK);
    }
  });
});
