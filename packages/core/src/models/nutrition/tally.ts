import type { ModelWarning, Span } from '../../foundation/results/types.js';
import { requireWithin } from '../../foundation/validity/check.js';
import type { CitedRange } from '../../foundation/validity/constants.js';
import type { Mixture } from '../../matter/mixture/types.js';
import type { SpeciesId } from '../../matter/species.js';
import { ENERGY_CONSTANTS, type EnergyFactors, HYDROLYSATE_PARTS } from './energy-factors.js';
import {
  APART_NATURE,
  type Nature,
  SALT_PER_SODIUM,
  SODIUM_MASS_FRACTION,
  SPECIES_NATURE,
} from './nature.js';
import type { LabelAmounts, NutritionRules } from './types.js';

/** What a label counts in a mixture, for 100 g of it. */
export type Tally = {
  readonly amounts: LabelAmounts;
  /** Sugars and all else that starch syrup brings, g. */
  readonly sweeteningG: number;
  readonly drySolidsG: number;
  readonly massFraction: (species: SpeciesId) => number;
  readonly warnings: readonly ModelWarning[];
};

/** One thing a label counts, g in 100 g of the sweet. */
type Portion = {
  readonly nature: Nature;
  readonly massG: number;
  readonly species?: SpeciesId | undefined;
  readonly insoluble?: true;
};

/** More than any scale weighs: a million tonnes. */
const MASS_DOMAIN_G: Span = [0, 1e12];
const LEAST_MASS_DOMAIN_G: Span = [1e-9, 1e12];
/** No food gives more than fat; what a user writes is held to it with some room. */
const KCAL_DOMAIN: Span = [0, 10];
const KJ_DOMAIN: Span = [0, 42];

/** @throws ModelRangeError if the mixture weighs nothing, or a mass or a factor cannot be meant. */
export function tally(mixture: Mixture, rules: NutritionRules): Tally {
  requireWithin('massG', mixture.massG, LEAST_MASS_DOMAIN_G);
  const portions = portionsOf(mixture, rules);
  const gramsOf = (...natures: readonly Nature[]) =>
    portions.reduce((sum, one) => sum + (natures.includes(one.nature) ? one.massG : 0), 0);
  const massFraction = (species: SpeciesId) =>
    portions.reduce((sum, one) => sum + (one.species === species ? one.massG : 0), 0) / 100;
  const sugarsG = gramsOf('sugar');
  const { kcal, kJ, band, warnings } = energyOf(portions, rules);
  return {
    amounts: {
      energyKcal: kcal,
      energyKcalBand: band,
      energyKJ: kJ,
      carbohydrateG: gramsOf(...rules.carbohydrateHolds),
      sugarsG,
      addedSugarsG: sugarsG,
      polyolsG: gramsOf('polyol'),
      fibreG: gramsOf('fibre'),
      organicAcidsG: gramsOf('organic-acid'),
      proteinG: gramsOf('protein'),
      fatG: gramsOf('fat'),
      ethanolG: gramsOf('ethanol'),
      saltG: saltOf(portions),
    },
    sweeteningG: portions.reduce((sum, one) => sum + (isSweetening(one) ? one.massG : 0), 0),
    drySolidsG: portions.reduce((sum, one) => sum + one.massG, 0),
    massFraction,
    warnings,
  };
}

function portionsOf(mixture: Mixture, rules: NutritionRules): readonly Portion[] {
  const portions: Portion[] = [];
  const grams = (massG: number): number => {
    requireWithin('massG', massG, MASS_DOMAIN_G);
    return (massG / mixture.massG) * 100;
  };
  for (const solid of mixture.solids) {
    const massG = grams(solid.massG);
    if (solid.kind === 'pure') {
      const { species } = solid;
      const nature = rules.countsAs[species] ?? SPECIES_NATURE[species];
      portions.push({ nature, massG, species });
      continue;
    }
    // Glucose and maltose are sugars to the law; what is longer is only carbohydrate.
    const sugarsG = massG * (solid.profile.dp1 + solid.profile.dp2);
    portions.push({ nature: 'sugar', massG: sugarsG });
    portions.push({
      nature: 'carbohydrate',
      massG: massG - sugarsG,
      species: 'syrup-oligosaccharides',
    });
  }
  for (const { kind, massG } of mixture.apart) {
    const portion: Portion = { nature: APART_NATURE[kind], massG: grams(massG) };
    portions.push(kind === 'insoluble' ? { ...portion, insoluble: true } : portion);
  }
  return portions;
}

/** Sugars, also those a law does not call so, and what is cut from starch. */
function isSweetening({ nature, species }: Portion): boolean {
  const own = species === undefined ? nature : SPECIES_NATURE[species];
  return own === 'sugar' || species === 'syrup-oligosaccharides';
}

function saltOf(portions: readonly Portion[]): number {
  let sodiumG = 0;
  for (const { species, massG } of portions) {
    if (species === undefined || !(species in SODIUM_MASS_FRACTION)) continue;
    sodiumG += massG * SODIUM_MASS_FRACTION[species as keyof typeof SODIUM_MASS_FRACTION].value;
  }
  return sodiumG * SALT_PER_SODIUM.value;
}

type Energy = {
  readonly kcal: number;
  readonly kJ: number;
  readonly band: Span;
  readonly warnings: readonly ModelWarning[];
};

function energyOf(portions: readonly Portion[], rules: NutritionRules): Energy {
  const warnings: ModelWarning[] = [];
  let kcal = 0;
  let kJ = 0;
  let low = 0;
  let high = 0;
  for (const portion of portions) {
    if (portion.nature === 'no-energy' || portion.massG === 0) continue;
    const factor = factorOf(rules.kcalPerG, portion);
    if (factor === undefined) {
      warnings.push({
        code: 'species-not-modelled',
        parameter: 'shareOfLabel',
        value: portion.massG / 100,
        limits: [0, 0],
        subject: portion.species,
      });
      continue;
    }
    requireWithin('kcalPerG', factor.value, KCAL_DOMAIN);
    kcal += portion.massG * factor.value;
    low += portion.massG * leastOf(factor, portion);
    high += portion.massG * Math.max(factor.high ?? factor.value, factor.value);
    if ('perG' in rules.kJ) kJ += portion.massG * kJFactor(rules.kJ.perG, portion);
  }
  if ('perKcal' in rules.kJ) kJ = kcal * rules.kJ.perKcal.value;
  return { kcal, kJ, band: [low, high + hydrolysateKcal(portions, rules.kcalPerG)], warnings };
}

function leastOf(factor: CitedRange, { insoluble }: Portion): number {
  const { leastOfInsoluble } = ENERGY_CONSTANTS;
  const least = insoluble === true ? leastOfInsoluble.value : (factor.low ?? factor.value);
  return Math.min(least, factor.value);
}

function kJFactor(factors: EnergyFactors, portion: Portion): number {
  // A factor in kilocalories without its twin is a slip in the rules, not in the sweet.
  const value = factorOf(factors, portion)?.value ?? Number.NaN;
  requireWithin('kJPerG', value, KJ_DOMAIN);
  return value;
}

function factorOf(factors: EnergyFactors, { species, nature }: Portion): CitedRange | undefined {
  const own: Readonly<Partial<Record<string, CitedRange>>> = factors;
  return (
    (species === undefined ? undefined : own[species]) ??
    own[nature === 'sugar' ? 'carbohydrate' : nature]
  );
}

/**
 * What is missing if the sugar alcohols beside long chains came with them in a hydrogenated syrup:
 * some laws give such a syrup one factor, as a whole. A mixture does not remember its bags.
 */
function hydrolysateKcal(portions: readonly Portion[], factors: EnergyFactors): number {
  const whole = factors['hydrogenated-oligosaccharides'];
  if (whole === undefined) return 0;
  const parts: readonly (SpeciesId | undefined)[] = HYDROLYSATE_PARTS;
  const share = ENERGY_CONSTANTS.longShareOfHydrolysate.value;
  let longG = 0;
  let partsG = 0;
  let missing = 0;
  for (const portion of portions) {
    if (portion.species === 'hydrogenated-oligosaccharides') longG += portion.massG;
    if (!parts.includes(portion.species)) continue;
    const factor = factorOf(factors, portion) ?? whole;
    partsG += portion.massG;
    missing += portion.massG * Math.max(0, whole.value - factor.value);
  }
  const mayBelongG = (longG * (1 - share)) / share;
  return partsG > 0 ? missing * Math.min(1, mayBelongG / partsG) : 0;
}
