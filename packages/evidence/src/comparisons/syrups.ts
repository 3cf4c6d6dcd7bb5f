import {
  boilingPoint,
  type Conversion,
  dextroseEquivalentFromProfile,
  type Mixture,
  mixture,
  molarMassFromDextroseEquivalent,
  molarMassFromProfile,
  type Profile,
} from 'vitrose';
import { syrupProfilesDetailedTable, syrupProfilesTable } from '../tables/syrup/index.js';
import type { EvidenceRow } from '../types.js';
import type { Comparison } from './types.js';
import { numberIn, textIn } from './types.js';

const PROFILE_ROWS: readonly EvidenceRow[] = [
  ...syrupProfilesTable.rows,
  ...syrupProfilesDetailedTable.rows,
];

/** The printed profile a check row is about; whatever is longer than three units is one lump. */
function profileRow(row: EvidenceRow): EvidenceRow {
  const id = textIn(row, 'id');
  const found = PROFILE_ROWS.find((candidate) => candidate.id === id);
  if (found === undefined) throw new RangeError(`No printed profile is called ${id}.`);
  return found;
}

function profileOf(row: EvidenceRow): Profile {
  const printed = profileRow(row);
  const [dp1, dp2, dp3] = (['dp1Percent', 'dp2Percent', 'dp3Percent'] as const).map(
    (column) => numberIn(printed, column) / 100,
  ) as [number, number, number];
  return { dp1, dp2, dp3, dp4plus: 1 - dp1 - dp2 - dp3 };
}

const conversionOf = (row: EvidenceRow): Conversion =>
  textIn(profileRow(row), 'conversion') as Conversion;

const fromProfile = (row: EvidenceRow): number =>
  dextroseEquivalentFromProfile(profileOf(row), { conversion: conversionOf(row) })
    .dextroseEquivalent;

/** Syrup solids of one profile in water; only the molar mass rests on `given`. */
function syrup(row: EvidenceRow, solids: number, given: 'de' | 'profile'): Mixture {
  const whole = mixture([
    {
      ingredient: 'glucose-syrup',
      massG: 100,
      drySolidsMassFraction: solids,
      dextroseEquivalent: numberIn(row, 'dextroseEquivalent'),
      profile: profileOf(row),
    },
  ]);
  return { ...whole, solids: whole.solids.map((solid) => ({ ...solid, given })) };
}

const difference = (row: EvidenceRow, solids: number): number =>
  boilingPoint(syrup(row, solids, 'profile')).boilingPointC -
  boilingPoint(syrup(row, solids, 'de')).boilingPointC;

/** Profiles, dextrose equivalent and molar mass of starch syrups. */
export const SYRUP_COMPARISONS: readonly Comparison[] = [
  ...(['nominalDextroseEquivalent', 'computedDextroseEquivalent'] as const).map(
    (column): Comparison => ({
      table: 'syrup-de-from-profile-checks',
      column,
      model: 'dextroseEquivalentFromProfile',
      answer: (row) => ({ label: textIn(row, 'id'), computed: fromProfile(row) }),
    }),
  ),
  {
    table: 'syrup-molar-mass',
    column: 'molarMassFromDeGPerMol',
    model: 'molarMassFromDextroseEquivalent',
    answer: (row) => ({
      label: textIn(row, 'id'),
      computed: molarMassFromDextroseEquivalent(numberIn(row, 'dextroseEquivalent'))
        .molarMassGPerMol,
    }),
  },
  {
    table: 'syrup-molar-mass',
    column: 'molarMassFromProfileGPerMol',
    model: 'molarMassFromProfile',
    answer: (row) => ({
      label: textIn(row, 'id'),
      computed: molarMassFromProfile({
        profile: profileOf(row),
        dextroseEquivalent: numberIn(row, 'dextroseEquivalent'),
      }).molarMassGPerMol,
    }),
  },
  {
    table: 'syrup-molar-mass',
    column: 'boilingDifferenceAt70PercentK',
    model: 'boilingPoint',
    answer: (row) => ({ label: textIn(row, 'id'), computed: difference(row, 0.7) }),
  },
  {
    table: 'syrup-molar-mass',
    column: 'boilingDifferenceAt97PercentK',
    model: 'boilingPoint',
    answer: (row) => ({ label: textIn(row, 'id'), computed: difference(row, 0.97) }),
  },
];
