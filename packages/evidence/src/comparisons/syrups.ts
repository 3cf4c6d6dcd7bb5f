import {
  blendTwoSyrups,
  boilingPoint,
  type Conversion,
  dextroseEquivalentFromProfile,
  dextroseEquivalentOfChain,
  type Mixture,
  mixture,
  molarMassFromDextroseEquivalent,
  molarMassFromProfile,
  type Profile,
  type SyrupFromDried,
  syrupFromDried,
  type TwoSyrupBlend,
} from 'vitrose';
import { syrupProfilesDetailedTable, syrupProfilesTable } from '../tables/syrup/index.js';
import type { EvidenceRow } from '../types.js';
import { type Answer, answered, type Comparison, numberIn, textIn } from './types.js';

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

const strengthIn = (row: EvidenceRow, part: 'a' | 'b') => ({
  drySolidsMassFraction: numberIn(row, `${part}DrySolidsMassFraction`),
  dextroseEquivalent: numberIn(row, `${part}DextroseEquivalent`),
});

const targetIn = (row: EvidenceRow) => ({
  massG: numberIn(row, 'targetMassG'),
  drySolidsMassFraction: numberIn(row, 'targetDrySolidsMassFraction'),
  dextroseEquivalent: numberIn(row, 'targetDextroseEquivalent'),
});

/** A worked example with two syrups; the others make one powder up with water. */
const isBlend = (row: EvidenceRow): boolean => row.bDrySolidsMassFraction !== null;

function blended(row: EvidenceRow, column: 'aG' | 'bG' | 'waterG'): Answer | undefined {
  if (!isBlend(row)) return undefined;
  const [a, b, target] = [strengthIn(row, 'a'), strengthIn(row, 'b'), targetIn(row)];
  return {
    label: textIn(row, 'id'),
    computed: answered<TwoSyrupBlend>(blendTwoSyrups({ a, b, target }))[column],
  };
}

function madeUp(row: EvidenceRow, column: 'aG' | 'waterG'): Answer | undefined {
  if (isBlend(row)) return undefined;
  const { driedG, waterG } = answered<SyrupFromDried>(
    syrupFromDried({ dried: strengthIn(row, 'a'), target: targetIn(row) }),
  );
  return { label: textIn(row, 'id'), computed: column === 'aG' ? driedG : waterG };
}

/** Profiles, dextrose equivalent, molar mass and blends of starch syrups. */
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
  {
    table: 'syrup-de-contributions',
    column: 'byTheory',
    model: 'dextroseEquivalentOfChain',
    answer: (row) => ({
      label: `${numberIn(row, 'degreeOfPolymerisation')} units`,
      computed: dextroseEquivalentOfChain(numberIn(row, 'degreeOfPolymerisation'))
        .dextroseEquivalent,
    }),
  },
  ...(['aG', 'bG', 'waterG'] as const).map(
    (column): Comparison => ({
      table: 'syrup-blend-examples',
      column,
      model: 'blendTwoSyrups',
      answer: (row) => blended(row, column),
    }),
  ),
  ...(['aG', 'waterG'] as const).map(
    (column): Comparison => ({
      table: 'syrup-blend-examples',
      column,
      model: 'syrupFromDried',
      answer: (row) => madeUp(row, column),
    }),
  ),
];
