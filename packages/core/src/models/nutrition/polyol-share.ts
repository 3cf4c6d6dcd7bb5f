import type { Checked, None, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { Cited, CitedConstants } from '../../foundation/validity/constants.js';
import type { Mixture } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';
import { PORTION_DOMAIN_G } from './nutrition.js';

const source = 'polyol-guide',
  grade = 'secondary';

/**
 * A careful guide for one sitting, g per kg of body weight: the lowest dose without effect in the
 * studies we know, which were of adults. Mannitol and hydrogenated syrups are assumed.
 */
export const POLYOL_GUIDE = {
  sorbitol: { value: 0.15, source, grade },
  mannitol: { value: 0.15, source: 'assumption', grade: 'assumed' },
  isomalt: { value: 0.3, source, grade },
  maltitol: { value: 0.3, source, grade },
  xylitol: { value: 0.3, source, grade },
  lactitol: { value: 0.25, source, grade },
  erythritol: { value: 0.46, source, grade },
  'hydrogenated-oligosaccharides': { value: 0.25, source: 'assumption', grade: 'assumed' },
} as const satisfies Partial<Record<SpeciesId, Cited>>;

/** Who it is for, and how far off it may be. */
export const POLYOL_SHARE_CONSTANTS = {
  childKg: { value: 20, source: 'assumption', grade: 'assumed', note: 'about six years old' },
  factorEitherWay: { value: 1.5, source: 'assumption', grade: 'assumed' },
} as const satisfies CitedConstants;

/** From a newborn to the heaviest there are, kg. */
export const BODY_MASS_DOMAIN_KG: Span = [1, 500];

/** One piece beside the guide for one sitting. Information, not medical advice. */
export type PolyolShare = {
  /** In the piece, g. */
  readonly polyolsG: number;
  /** Of the guide for this body; 1 is all of it. */
  readonly share: number;
  readonly band: Span;
  /** Whole pieces that stay within the guide. */
  readonly pieces: number;
  /** The caution that belongs beside it. */
  readonly caution: 'polyol-child';
};

/**
 * How much of what a body bears in one sitting one piece of a sugar-free sweet takes up.
 *
 * Information, not medical advice. The studies were of adults; small bodies, a sensitive gut and an
 * empty stomach bear less. Several sugar alcohols add up, each by its own guide. Glycerol is in no
 * guide and is left out.
 *
 * @equation share = Σ doseᵢ/(guideᵢ·body mass)
 * @param mixture - The sweet.
 * @param options - `pieceG`: what is eaten in one sitting, 0.01 to 100 000 g; `bodyMassKg`: 1 to
 *   500 kg, a child of 20 kg by default.
 * @returns `share`, its `band` and whole `pieces` within the guide; `none` without sugar alcohols.
 * @throws {@link ModelRangeError} if the piece or the body cannot be meant.
 * @example
 * polyolShare(solutionOf('isomalt', { drySolidsMassFraction: 1 }), { pieceG: 4, bodyMassKg: 60 })
 *   .pieces // 4
 * @source polyol-guide
 */
export function polyolShare(
  mixture: Mixture,
  options: { readonly pieceG: number; readonly bodyMassKg?: number | undefined },
): Checked<PolyolShare> | None<'no-polyols'> {
  const { pieceG, bodyMassKg = POLYOL_SHARE_CONSTANTS.childKg.value } = options;
  requireWithin('pieceG', pieceG, PORTION_DOMAIN_G);
  requireWithin('bodyMassKg', bodyMassKg, BODY_MASS_DOMAIN_KG);
  let polyolsG = 0;
  let share = 0;
  for (const solid of mixture.solids) {
    const guide = solid.kind === 'pure' ? guideOf(solid.species) : undefined;
    if (guide === undefined) continue;
    const doseG = (solid.massG / mixture.massG) * pieceG;
    polyolsG += doseG;
    share += doseG / (guide * bodyMassKg);
  }
  if (!(share > 0)) return { kind: 'none', reason: 'no-polyols' };
  const { value: factor } = POLYOL_SHARE_CONSTANTS.factorEitherWay;
  return {
    polyolsG,
    share,
    band: [share / factor, share * factor],
    pieces: Math.floor(1 / share),
    caution: 'polyol-child',
    warnings: [],
  };
}

function guideOf(species: SpeciesId): number | undefined {
  const guide: Readonly<Partial<Record<SpeciesId, Cited>>> = POLYOL_GUIDE;
  return guide[species]?.value;
}
