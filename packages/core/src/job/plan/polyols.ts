import type { Mixture } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';
import { figure } from './figure.js';
import type { PlannedPolyols } from './types.js';

const source = 'polyol-guide',
  grade = 'secondary';

/**
 * A careful guide for one sitting, g per kg of body weight: the lowest dose without effect in the
 * studies we know of adults. Mannitol and hydrogenated syrups are assumed like their nearest kin.
 */
export const POLYOL_GUIDE_G_PER_KG = {
  sorbitol: { value: 0.15, source, grade },
  mannitol: { value: 0.15, source: 'assumption', grade: 'assumed' },
  isomalt: { value: 0.3, source, grade },
  maltitol: { value: 0.3, source, grade },
  xylitol: { value: 0.3, source, grade },
  lactitol: { value: 0.25, source, grade },
  erythritol: { value: 0.46, source, grade },
  'hydrogenated-oligosaccharides': { value: 0.25, source: 'assumption', grade: 'assumed' },
} as const;

/** A child of about six, kg. */
const CHILD_KG = 20;

/** Small bodies and an empty stomach bear less; the studies were of adults. A factor either way. */
const GUIDE_FACTOR = 1.5;

/** Sugar alcohols in the sweet and in a piece; nothing when there are none. */
export function planPolyols(
  finished: Mixture,
  pieceG: number | undefined,
): PlannedPolyols | undefined {
  let share = 0;
  let load = 0;
  for (const solid of finished.solids) {
    const guide = solid.kind === 'pure' ? guideOf(solid.species) : undefined;
    if (guide === undefined) continue;
    share += solid.massG / finished.massG;
    load += solid.massG / finished.massG / guide;
  }
  if (share === 0) return undefined;
  if (pieceG === undefined) return { massFraction: share };
  const childShare = (load * pieceG) / CHILD_KG;
  return {
    massFraction: share,
    perPieceG: share * pieceG,
    childShare: figure(
      childShare,
      [childShare / GUIDE_FACTOR, childShare * GUIDE_FACTOR],
      'polyol-guide',
    ),
    childPieces: Math.floor(1 / childShare),
  };
}

function guideOf(species: SpeciesId): number | undefined {
  return species in POLYOL_GUIDE_G_PER_KG
    ? POLYOL_GUIDE_G_PER_KG[species as keyof typeof POLYOL_GUIDE_G_PER_KG].value
    : undefined;
}
