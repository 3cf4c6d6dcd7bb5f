import type { ModelWarning } from '../../foundation/results/types.js';
import { warnOutside } from '../../foundation/validity/check.js';
import { ModelRangeError } from '../../foundation/validity/model-range-error.js';
import { totalG } from '../../matter/mixture/assemble.js';
import type { Mixture, Solid } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';
import {
  GLASS_BAND_CONSTANTS,
  GLASS_CONSTANTS,
  GLASS_TESTED_DEXTROSE_EQUIVALENT,
} from './constants.js';
import { DRY_GLASS, type DryGlass } from './dry-parameters.js';

/** The part of a mixture the glass model knows, water left out. */
export type DryMixture = {
  /** °C. */
  readonly glassTransitionC: number;
  /** Gordon–Taylor constant of the dry mix against water. */
  readonly k: number;
  /** Mean of the bands of the parts, by share, K. */
  readonly ownBandK: number;
  /** 0 for one substance, 1 for a mixture. */
  readonly mixed: number;
  /** Mass of what is modelled, g. */
  readonly massG: number;
  readonly warnings: readonly ModelWarning[];
};

type Part = {
  readonly dryC: number;
  readonly k: number;
  readonly bandK: number;
};

/** Kelvin, inside the equation only. */
const ZERO_C_IN_K = 273.15;

/**
 * Fox equation over the dry parts: 1/Tg = Σ xᵢ/Tgᵢ in kelvin.
 *
 * @throws ModelRangeError if nothing in the mixture has a known glass transition.
 */
export function dryMixture({ solids }: Mixture): DryMixture {
  const dissolvedG = totalG(solids);
  const warnings: ModelWarning[] = [];
  let massG = 0;
  let inverse = 0;
  let k = 0;
  let ownBandK = 0;
  let squares = 0;
  let syrupG = 0;
  for (const solid of solids) {
    const part = solid.kind === 'pure' ? purePart(solid.species) : syrupPart(solid, warnings);
    if (part === undefined) {
      warnings.push(notModelled(solid, dissolvedG));
      continue;
    }
    massG += solid.massG;
    inverse += solid.massG / (part.dryC + ZERO_C_IN_K);
    k += solid.massG * part.k;
    ownBandK += solid.massG * part.bandK;
    if (solid.kind === 'saccharides') syrupG += solid.massG;
    // Isomalt is itself two sugar alcohols, about half and half.
    else squares += solid.massG ** 2 / (solid.species === 'isomalt' ? 2 : 1);
  }
  if (massG === 0) {
    throw new ModelRangeError('Nothing in this mixture has a known glass transition.', {
      code: 'outside-range',
      parameter: 'solids',
      received: solids,
    });
  }
  // Syrups count as one substance here: two halves of one syrup are no mixture.
  const alike = (squares + syrupG ** 2) / massG ** 2;
  return {
    glassTransitionC: massG / inverse - ZERO_C_IN_K,
    k: k / massG,
    ownBandK: ownBandK / massG,
    mixed: Math.min(1, Math.max(0, 1 - alike) / GLASS_BAND_CONSTANTS.fullyMixed.value),
    massG,
    warnings,
  };
}

function purePart(species: SpeciesId): Part | undefined {
  const known: Readonly<Partial<Record<SpeciesId, DryGlass>>> = DRY_GLASS;
  const dry = known[species];
  if (dry === undefined) return undefined;
  const { sugarKPerC: a, sugarKAt0C: b, syrupK } = GLASS_CONSTANTS;
  const k = dry.longChains ? syrupK.value : a.value * dry.value + b.value;
  return { dryC: dry.value, k, bandK: dry.bandK };
}

function syrupPart(
  { dextroseEquivalent }: Extract<Solid, { kind: 'saccharides' }>,
  warnings: ModelWarning[],
): Part {
  warnings.push(
    ...warnOutside('dextroseEquivalent', dextroseEquivalent, GLASS_TESTED_DEXTROSE_EQUIVALENT),
  );
  return {
    dryC: syrupGlassTransitionC(dextroseEquivalent),
    k: GLASS_CONSTANTS.syrupK.value,
    bandK: GLASS_BAND_CONSTANTS.syrupK.value,
  };
}

/** Tg(DE) = 274.4 − 50.26·DE^0.343, °C. */
function syrupGlassTransitionC(dextroseEquivalent: number): number {
  const { syrupGlassAtZeroC: A, syrupGlassFall: B, syrupGlassPower: n } = GLASS_CONSTANTS;
  return A.value - B.value * dextroseEquivalent ** n.value;
}

function notModelled(solid: Solid, dissolvedG: number): ModelWarning {
  return {
    code: 'species-not-modelled',
    parameter: 'shareOfDissolvedSolids',
    value: solid.massG / dissolvedG,
    limits: [0, 0],
    subject: solid.kind === 'pure' ? solid.species : 'saccharides',
  };
}
