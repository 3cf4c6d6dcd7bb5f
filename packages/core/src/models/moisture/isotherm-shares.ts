import type { ModelWarning } from '../../foundation/results/types.js';
import type { Mixture, Solid } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';
import { SORPTION_BAND } from './constants.js';
import type { IsothermShare } from './gab.js';
import {
  ISOTHERMS,
  type IsothermId,
  MEASURED_ISOTHERMS,
  POLYOLS,
  STAND_IN_ISOTHERMS,
} from './isotherms.js';

/** The dissolved solids by the isotherm that serves them. */
export type IsothermShares = {
  readonly parts: readonly IsothermShare[];
  /** What the water may be wrong by, as a fraction of it. */
  readonly plusMinus: number;
  readonly polyolShare: number;
  /** Of what nobody measured and nothing stands in for; it counts as sucrose. */
  readonly unknownShare: number;
  readonly warnings: readonly ModelWarning[];
};

/** Sorts the dissolved solids, which weigh something. */
export function isothermShares({ solids }: Mixture, dissolvedG: number): IsothermShares {
  const shares: Record<IsothermId, number> = {
    sucrose: 0,
    'syrup-solids': 0,
    sorbitol: 0,
    lactose: 0,
  };
  const warnings: ModelWarning[] = [];
  let measuredShare = 0;
  let polyolShare = 0;
  let unknownShare = 0;
  for (const solid of solids) {
    const share = solid.massG / dissolvedG;
    if (solid.kind === 'pure' && POLYOLS.includes(solid.species)) polyolShare += share;
    const measured = measuredFor(solid);
    const standIn = solid.kind === 'pure' ? own(STAND_IN_ISOTHERMS, solid.species) : undefined;
    shares[measured ?? standIn ?? 'sucrose'] += share;
    if (measured !== undefined) measuredShare += share;
    else if (standIn === undefined && solid.kind === 'pure' && share > 0) {
      unknownShare += share;
      warnings.push({
        code: 'species-not-modelled',
        parameter: 'shareOfDissolvedSolids',
        value: share,
        limits: [0, 0],
        subject: solid.species,
      });
    }
  }
  const parts: IsothermShare[] = [];
  for (const [id, isotherm] of Object.entries(ISOTHERMS)) {
    const share = shares[id as IsothermId];
    if (share > 0) parts.push({ share, isotherm });
  }
  const { measured, standIn } = SORPTION_BAND;
  return {
    parts,
    plusMinus: measuredShare * measured.value + (1 - measuredShare) * standIn.value,
    polyolShare,
    unknownShare,
    warnings,
  };
}

function measuredFor(solid: Solid): IsothermId | undefined {
  return solid.kind === 'saccharides' ? 'syrup-solids' : own(MEASURED_ISOTHERMS, solid.species);
}

/** A species may come from a user's own ingredient, so it need not be in any table. */
function own(
  table: Readonly<Partial<Record<SpeciesId, IsothermId>>>,
  species: SpeciesId,
): IsothermId | undefined {
  return Object.hasOwn(table, species) ? table[species] : undefined;
}
