import type { Checked, Span } from '../../foundation/results/types.js';
import { requireWithin, warnOutside } from '../../foundation/validity/check.js';
import type { CitedConstants } from '../../foundation/validity/constants.js';
import {
  GLUCOSE_TIMES_HUNDRED_G_PER_MOL,
  MOLAR_MASS_TESTED_DEXTROSE_EQUIVALENT,
  molarMassFromDextroseEquivalent,
  molarMassFromProfile,
} from './molar-mass.js';
import { profileFromDextroseEquivalent } from './profile.js';
import type { Conversion } from './types.js';

const source = 'definition';
const grade = 'derived';

/** A chain is so many glucose units and the water at its two ends, by formula. */
export const CHAIN_CONSTANTS = {
  glucoseUnitGPerMol: { value: 162.1406, source, grade },
  waterGPerMol: { value: 18.0153, source, grade },
} as const satisfies CitedConstants;

/** One unit is glucose; longer than this nothing is sold as a syrup or a maltodextrin. */
export const CHAIN_DOMAIN_UNITS: Span = [1, 120];
/** Glucose, to starch barely cut: the molar masses of a dextrose equivalent of 100 and of 1. */
export const CHAIN_DOMAIN_G_PER_MOL: Span = [180.15, 18_015.6];

/**
 * Molar mass of a chain of so many glucose units.
 *
 * Means may be given too: half a unit is none that exists, but a mean of some that do.
 *
 * @equation M = 162.1406·n + 18.0153
 * @param degreeOfPolymerisation - Glucose units in a chain, 1 to 120.
 * @returns `molarMassGPerMol`, g/mol.
 * @throws {@link ModelRangeError} outside 1 to 120.
 * @example
 * molarMassFromDegreeOfPolymerisation(2).molarMassGPerMol // 342.297 g/mol, maltose
 * @source definition
 */
export function molarMassFromDegreeOfPolymerisation(degreeOfPolymerisation: number): {
  readonly molarMassGPerMol: number;
} {
  requireWithin('degreeOfPolymerisation', degreeOfPolymerisation, CHAIN_DOMAIN_UNITS);
  const { glucoseUnitGPerMol: unit, waterGPerMol: water } = CHAIN_CONSTANTS;
  return { molarMassGPerMol: unit.value * degreeOfPolymerisation + water.value };
}

/**
 * How many glucose units a chain of this molar mass has, or a syrup in the mean by number.
 *
 * @equation n = (M − 18.0153) / 162.1406
 * @param molarMassGPerMol - Of the chain, or number average of the solids; 180.15 to 18 015.6 g/mol.
 * @returns `degreeOfPolymerisation`, glucose units.
 * @throws {@link ModelRangeError} outside the domain.
 * @example
 * degreeOfPolymerisationFromMolarMass(504.44).degreeOfPolymerisation // 3.000, maltotriose
 * @source definition
 */
export function degreeOfPolymerisationFromMolarMass(molarMassGPerMol: number): {
  readonly degreeOfPolymerisation: number;
} {
  requireWithin('molarMassGPerMol', molarMassGPerMol, CHAIN_DOMAIN_G_PER_MOL);
  return { degreeOfPolymerisation: unitsOf(molarMassGPerMol) };
}

/**
 * What a pure chain of so many units reduces, dextrose = 100: one end each, by theory.
 *
 * The copper method reads the longer ones about a tenth higher; see
 * `dextroseEquivalentFromProfile` for the figure on a label.
 *
 * @equation e = 100 · 180.156 / (162.1406·n + 18.0153)
 * @param degreeOfPolymerisation - Glucose units in the chain, 1 to 120.
 * @returns `dextroseEquivalent`, dextrose = 100.
 * @throws {@link ModelRangeError} outside 1 to 120.
 * @example
 * dextroseEquivalentOfChain(2).dextroseEquivalent // 52.63, maltose
 * @source definition
 */
export function dextroseEquivalentOfChain(degreeOfPolymerisation: number): {
  readonly dextroseEquivalent: number;
} {
  const { molarMassGPerMol } = molarMassFromDegreeOfPolymerisation(degreeOfPolymerisation);
  return { dextroseEquivalent: GLUCOSE_TIMES_HUNDRED_G_PER_MOL.value / molarMassGPerMol };
}

/**
 * Dextrose equivalent of syrup solids whose mean molar mass is known.
 *
 * The way back from `molarMassFromDextroseEquivalent`: by theory, so a little under what the copper
 * method prints on a label.
 *
 * @equation DE = 18 015.6 / M
 * @param molarMassGPerMol - Number average, 180.15 to 18 015.6 g/mol.
 * @returns `dextroseEquivalent`, dextrose = 100; a warning below 30.
 * @throws {@link ModelRangeError} outside the domain.
 * @example
 * dextroseEquivalentFromMolarMass(428.943).dextroseEquivalent // 42.00
 * @source definition
 */
export function dextroseEquivalentFromMolarMass(
  molarMassGPerMol: number,
): Checked<{ dextroseEquivalent: number }> {
  requireWithin('molarMassGPerMol', molarMassGPerMol, CHAIN_DOMAIN_G_PER_MOL);
  const dextroseEquivalent = Math.min(
    100, // The molar mass of glucose ends in other digits than that of one unit and water.
    GLUCOSE_TIMES_HUNDRED_G_PER_MOL.value / molarMassGPerMol,
  );
  return {
    dextroseEquivalent,
    warnings: warnOutside(
      'dextroseEquivalent',
      dextroseEquivalent,
      MOLAR_MASS_TESTED_DEXTROSE_EQUIVALENT,
    ),
  };
}

/**
 * How long the chains of a syrup are in the mean, by number, and what they weigh.
 *
 * With the conversion the chains are those of a syrup cut that way, and a dextrose equivalent that
 * conversion does not reach is refused. Without it only the reducing power counts; the mean is then
 * 5 to 9 % shorter, because the copper method over-reads long chains.
 *
 * @equation n = (M − 18.0153) / 162.1406
 * @param syrup - `dextroseEquivalent`, 1 to 100; `conversion`: how the starch was cut, which narrows
 *   that to 20 to 63 (acid), 45 to 97 (enzyme), 40 to 50 (high maltose).
 * @returns `degreeOfPolymerisation`, glucose units, and `molarMassGPerMol`, g/mol; a warning below
 *   a dextrose equivalent of 30.
 * @throws {@link ModelRangeError} outside those.
 * @example
 * meanDegreeOfPolymerisation({ dextroseEquivalent: 42 }).degreeOfPolymerisation // 2.534
 * @source definition, syrup-profile-fit
 */
export function meanDegreeOfPolymerisation({
  dextroseEquivalent,
  conversion,
}: {
  readonly dextroseEquivalent: number;
  readonly conversion?: Conversion | undefined;
}): Checked<{ degreeOfPolymerisation: number; molarMassGPerMol: number }> {
  const { molarMassGPerMol, warnings } =
    conversion === undefined
      ? molarMassFromDextroseEquivalent(dextroseEquivalent)
      : molarMassFromProfile({
          profile: profileFromDextroseEquivalent(dextroseEquivalent, { conversion }).profile,
          dextroseEquivalent,
        });
  return { degreeOfPolymerisation: unitsOf(molarMassGPerMol), molarMassGPerMol, warnings };
}

function unitsOf(molarMassGPerMol: number): number {
  const { glucoseUnitGPerMol: unit, waterGPerMol: water } = CHAIN_CONSTANTS;
  return (molarMassGPerMol - water.value) / unit.value;
}
