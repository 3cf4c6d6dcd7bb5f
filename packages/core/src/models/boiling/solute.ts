import type { ModelWarning, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Mixture, Solid } from '../../matter/mixture/types.js';
import {
  molarMassFromDextroseEquivalent,
  molarMassFromProfile,
} from '../../matter/saccharides/molar-mass.js';
import type { SpeciesId } from '../../matter/species.js';
import {
  ASSUMED_POLYOLS,
  ASSUMED_SOLUTES,
  LONG_CHAINS,
  NORRISH_POLYOLS,
  NORRISH_SUGARS,
  REFERENCE_SOLUTE,
  type SoluteRow,
  type SoluteRows,
  UNKNOWN_SOLUTE,
} from './parameters.js';

/** The dissolved solids of a mass as the boiling model sees them: averages by mass. */
export type Solute = {
  readonly massG: number;
  /** Mol of particles in a gram. */
  readonly inverseMolarMass: number;
  readonly interaction: number;
  /** What the interaction may be wrong by, either way. */
  readonly interactionPlusMinus: number;
  readonly polyolShare: number;
  readonly holdsSucrose: boolean;
  readonly warnings: readonly ModelWarning[];
};

/** A thousand tonnes is no batch. */
const MASS_LIMITS_G: Span = [0, 1e9];

type Known = Omit<Solute, 'massG' | 'holdsSucrose'>;

/** Averages the solids of a mass; without any, an empty solute that changes nothing. */
export function soluteOf({ solids }: Mixture): Solute {
  let massG = 0;
  for (const solid of solids) {
    requireWithin('massG', solid.massG, MASS_LIMITS_G);
    massG += solid.massG;
  }
  let inverseMolarMass = 0;
  let interaction = 0;
  let interactionPlusMinus = 0;
  let polyolShare = 0;
  let holdsSucrose = false;
  const warnings: ModelWarning[] = [];
  for (const solid of solids) {
    // A jar left empty has no say.
    if (solid.massG === 0) continue;
    const share = solid.massG / massG;
    const known = solid.kind === 'pure' ? knownOf(solid.species, share) : knownOfSyrup(solid);
    inverseMolarMass += share * known.inverseMolarMass;
    interaction += share * known.interaction;
    interactionPlusMinus += share * known.interactionPlusMinus;
    polyolShare += share * known.polyolShare;
    holdsSucrose ||= solid.kind === 'pure' && solid.species === 'sucrose';
    warnings.push(...known.warnings);
  }
  return {
    massG,
    inverseMolarMass,
    interaction,
    interactionPlusMinus,
    polyolShare,
    holdsSucrose,
    warnings,
  };
}

/** Dissolved share of solids and water; a mass without water has nothing to dissolve in. */
export function dissolvedOf({ waterG, dissolvedMassFraction }: Mixture): number {
  return waterG > 0 ? dissolvedMassFraction : 1;
}

function knownOf(species: string, share: number): Known {
  for (const { rows, polyols } of [
    REFERENCE_SOLUTE,
    NORRISH_SUGARS,
    NORRISH_POLYOLS,
    LONG_CHAINS,
    ASSUMED_POLYOLS,
    ASSUMED_SOLUTES,
  ] as readonly SoluteRows[]) {
    // A species may come from a user's own ingredient, so it need not be in any table.
    if (Object.hasOwn(rows, species)) return fromRow(rows[species as SpeciesId], polyols);
  }
  return { ...fromRow(UNKNOWN_SOLUTE), warnings: [notModelled(species, share)] };
}

function fromRow(row: SoluteRow = UNKNOWN_SOLUTE, polyols = false): Known {
  const [molarMassGPerMol, interaction, interactionPlusMinus, particles = 1] = row;
  return {
    inverseMolarMass: particles / molarMassGPerMol,
    interaction,
    interactionPlusMinus,
    polyolShare: polyols ? 1 : 0,
    warnings: [],
  };
}

function notModelled(species: string, share: number): ModelWarning {
  return {
    code: 'species-not-modelled',
    parameter: 'shareOfDissolvedSolids',
    value: share,
    limits: [0, 0],
    subject: species,
  };
}

function knownOfSyrup(syrup: Extract<Solid, { kind: 'saccharides' }>): Known {
  const { molarMassGPerMol, warnings } =
    syrup.given === 'de'
      ? molarMassFromDextroseEquivalent(syrup.dextroseEquivalent)
      : molarMassFromProfile(syrup);
  const { profile } = syrup;
  const [, ofDp1] = NORRISH_SUGARS.rows.glucose;
  const [, ofDp2] = NORRISH_SUGARS.rows.maltose;
  const [, ofLonger, plusMinus] = LONG_CHAINS.rows['syrup-oligosaccharides'];
  return {
    inverseMolarMass: 1 / molarMassGPerMol,
    interaction:
      profile.dp1 * ofDp1 + profile.dp2 * ofDp2 + (profile.dp3 + profile.dp4plus) * ofLonger,
    interactionPlusMinus: plusMinus,
    polyolShare: 0,
    warnings,
  };
}
