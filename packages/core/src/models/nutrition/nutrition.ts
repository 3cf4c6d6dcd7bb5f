import type { Checked, ModelWarning, Span } from '../../foundation/results/types.js';
import { joinWarnings } from '../../foundation/results/warnings.js';
import { requireWithin } from '../../foundation/validity/check.js';
import { unknownName } from '../../foundation/validity/model-range-error.js';
import type { Mixture } from '../../matter/mixture/types.js';
import { type ClaimQuestion, testClaims, testDoses } from './claims.js';
import { EU_RULES } from './rules-eu.js';
import { US_RULES } from './rules-us.js';
import { statementsFor } from './statements.js';
import { type Tally, tally } from './tally.js';
import type { DoseTest, LabelAmounts, LabelStatement, LabelTest, NutritionRules } from './types.js';

/** From a crumb to a crate, g. */
export const PORTION_DOMAIN_G: Span = [0.01, 100_000];

/** Whose law, and for how much of the sweet. */
export type NutritionOptions = {
  readonly rules: 'us' | 'eu' | NutritionRules;
  /** What the label calls a serving. */
  readonly servingG?: number | undefined;
  readonly pieceG?: number | undefined;
  /** What claims by the portion are measured on; by default that of the rules. */
  readonly referenceG?: number | undefined;
  /** The sweet a saving is measured beside; by default this one with all its solids sugar. */
  readonly comparedWith?: Mixture | undefined;
};

/** An estimate of what a label says. Information, never legal advice. */
export type Nutrition = {
  readonly per100G: LabelAmounts;
  readonly perServing?: LabelAmounts | undefined;
  readonly perPiece?: LabelAmounts | undefined;
  readonly statements: readonly LabelStatement[];
  readonly claims: readonly LabelTest[];
  readonly doses: readonly DoseTest[];
};

/**
 * What the label of a sweet says: energy, carbohydrate, sugars, sugar alcohols and the rest.
 *
 * An estimate from the recipe, never an analysis and never legal advice: check with your authority.
 * Claims are tests with the rule they rest on. A claim the sweet meets is no permission: the law
 * asks for more than figures. `needs-analysis` stands where the figures keep the limit and the
 * sweet may not: isomalt frees sugar in heat and acid, and a limit can lie inside the band.
 *
 * Energy adds up over what is in the mixture. Where a law gives a hydrogenated syrup one factor as a
 * whole, its parts are counted one by one and the band reaches up to the whole. Claims about health
 * are not tested.
 *
 * @equation E = Σ mᵢ·fᵢ, in kcal; EU kJ from kJ factors of their own, US kJ = 4.184·kcal
 * @param mixture - The finished sweet, with the water and alcohol that are still in it.
 * @param options - `rules`: `us`, `eu` or your own, where every factor and limit can be changed;
 *   `servingG`, `pieceG`, `referenceG`: 0.01 to 100 000 g; `comparedWith`: another sweet.
 * @returns `per100G`, `perServing` and `perPiece` where asked, g and kcal and kJ; `claims`,
 *   `statements` and `doses`, each with its rule; a warning for what has no factor.
 * @throws {@link ModelRangeError} if the mixture weighs nothing, a portion lies outside its limits,
 *   or a factor cannot be meant.
 * @example
 * nutrition(solutionOf('isomalt', { drySolidsMassFraction: 0.98 }), { rules: 'us', servingG: 15 })
 *   .perServing.energyKcal // 29.4 kcal
 * @source us-21-cfr-101-9, eu-1169-2011-annex-14, us-21-cfr-101-60, eu-1924-2006-annex
 */
export function nutrition(mixture: Mixture, options: NutritionOptions): Checked<Nutrition> {
  const rules = rulesOf(options.rules);
  const { servingG, pieceG, referenceG = rules.referenceG.value, comparedWith } = options;
  for (const [name, grams] of Object.entries({ servingG, pieceG, referenceG })) {
    if (grams !== undefined) requireWithin(name, grams, PORTION_DOMAIN_G);
  }
  const counted = tally(mixture, rules);
  const { beside, warnings } = besideOf(counted, comparedWith, rules);
  const claims = testClaims({ tally: counted, rules, referenceG, servingG, beside });
  return {
    per100G: counted.amounts,
    perServing: servingG === undefined ? undefined : portion(counted.amounts, servingG),
    perPiece: pieceG === undefined ? undefined : portion(counted.amounts, pieceG),
    statements: statementsFor(counted, claims, rules),
    claims,
    doses: testDoses(counted, rules),
    warnings: joinWarnings(counted.warnings, warnings),
  };
}

/** The rules by name, or the caller's own. */
export function rulesOf(rules: NutritionOptions['rules']): NutritionRules {
  if (rules === 'us') return US_RULES;
  if (rules === 'eu') return EU_RULES;
  if (typeof rules === 'object' && rules !== null) return rules;
  throw unknownName('rules', rules, "Rules are 'us', 'eu' or your own");
}

function besideOf(
  { drySolidsG }: Tally,
  comparedWith: Mixture | undefined,
  rules: NutritionRules,
): { beside: ClaimQuestion['beside']; warnings: readonly ModelWarning[] } {
  if (comparedWith === undefined) {
    const energyKcal = drySolidsG * rules.kcalPerG.carbohydrate.value;
    return { beside: { energyKcal, sugarsG: undefined }, warnings: [] };
  }
  const { amounts, warnings } = tally(comparedWith, rules);
  return { beside: { energyKcal: amounts.energyKcal, sugarsG: amounts.sugarsG }, warnings };
}

function portion(amounts: LabelAmounts, grams: number): LabelAmounts {
  const times = grams / 100;
  const [low, high] = amounts.energyKcalBand;
  return {
    energyKcal: amounts.energyKcal * times,
    energyKcalBand: [low * times, high * times],
    energyKJ: amounts.energyKJ * times,
    carbohydrateG: amounts.carbohydrateG * times,
    sugarsG: amounts.sugarsG * times,
    addedSugarsG: amounts.addedSugarsG * times,
    polyolsG: amounts.polyolsG * times,
    fibreG: amounts.fibreG * times,
    organicAcidsG: amounts.organicAcidsG * times,
    proteinG: amounts.proteinG * times,
    fatG: amounts.fatG * times,
    ethanolG: amounts.ethanolG * times,
    saltG: amounts.saltG * times,
  };
}
