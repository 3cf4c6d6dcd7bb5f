import type { Span } from '../../foundation/results/types.js';
import type { Cited, Grade } from '../../foundation/validity/constants.js';
import type { SpeciesId } from '../../matter/species.js';
import type { SourceId } from '../../sources/ids.js';
import type { EnergyFactors } from './energy-factors.js';
import type { Nature } from './nature.js';

/** What some grams of a sweet carry. */
export type LabelAmounts = {
  readonly energyKcal: number;
  /** From the lowest to the highest the factors allow, kcal. */
  readonly energyKcalBand: Span;
  readonly energyKJ: number;
  /** As the rules count it: in the US fibre and acids are in it, in the EU they are not. */
  readonly carbohydrateG: number;
  /** Free mono- and disaccharides; of a starch syrup only the first two chain lengths. */
  readonly sugarsG: number;
  /** All of the sugars: a boiled sweet has no others, except the lactose of milk. */
  readonly addedSugarsG: number;
  readonly polyolsG: number;
  readonly fibreG: number;
  readonly organicAcidsG: number;
  readonly proteinG: number;
  readonly fatG: number;
  readonly ethanolG: number;
  /** Sodium of the salts times 2.5; that of milk and nuts is not known. */
  readonly saltG: number;
};

/** Every claim there is a test of. */
export type ClaimId =
  | 'sugar-free'
  | 'low-sugars'
  | 'no-added-sugars'
  | 'reduced-sugars'
  | 'calorie-free'
  | 'low-energy'
  | 'reduced-energy';

/** What a claim looks at. `Share` is what is saved beside the sweet it is compared with. */
export type ClaimQuantity =
  | 'energyKcal'
  | 'sugarsG'
  | 'sweeteningG'
  | 'energySavedShare'
  | 'sugarsSavedShare';

/** How much of the sweet a claim looks at. */
export type ClaimPortion = '100G' | '50G' | 'reference' | 'serving';

/** How a value must lie beside its limit. */
export type Passes = 'below' | 'at-most' | 'at-least';

/** One condition of a claim. */
export type ClaimCondition = {
  readonly quantity: ClaimQuantity;
  readonly per: ClaimPortion;
  readonly passes: Passes;
  readonly limit: Cited;
};

/** A claim and every condition it must keep. */
export type ClaimRule = { readonly id: ClaimId; readonly conditions: readonly ClaimCondition[] };

/** Every statement a label may have to carry. */
export type StatementId =
  | 'may-be-laxative'
  | 'with-sweeteners'
  | 'with-sugars-and-sweeteners'
  | 'source-of-phenylalanine'
  | 'not-a-reduced-calorie-food'
  | 'laxative-by-the-day';

/** When a statement is asked for. */
export type StatementRule =
  | { readonly asks: 'polyols-above'; readonly limitMassFraction: Cited }
  | { readonly asks: 'sweeteners'; readonly rule: LabelRule }
  | { readonly asks: 'aspartame'; readonly rule: LabelRule }
  | { readonly asks: 'sugar-free-not-reduced'; readonly rule: LabelRule }
  | { readonly asks: 'eaten-in-a-day'; readonly species: SpeciesId; readonly limitG: Cited };

/** Where a rule stands and how well it is known. */
export type LabelRule = {
  readonly source: SourceId;
  readonly grade: Grade;
  readonly locator?: string;
};

/** The most of one substance a sweet may hold. */
export type DoseRule = { readonly species: SpeciesId; readonly limitMassFraction: Cited };

/** What rounding is known for. */
export type LabelNutrient = Exclude<
  keyof LabelAmounts,
  'energyKcalBand' | 'organicAcidsG' | 'ethanolG'
>;

/** One stretch of a rounding rule, up to `to`: written as nought, as under `step`, or to the nearest step. */
export type RoundingStep = {
  readonly to: number;
  /** Whether `to` itself still belongs here. */
  readonly inclusive: boolean;
  readonly as: 'zero' | 'less-than' | 'nearest';
  readonly step: number;
};

/** How one nutrient is rounded, from the smallest values up. */
export type RoundingRule = LabelRule & { readonly steps: readonly RoundingStep[] };

/**
 * The law a label is held against: plain data. Spread one of the library's own and change what has
 * changed, or what another country asks.
 */
export type NutritionRules = {
  readonly kcalPerG: EnergyFactors;
  /** Factors of their own, or one number to multiply kilocalories with. */
  readonly kJ: { readonly perG: EnergyFactors } | { readonly perKcal: Cited };
  /** What counts as carbohydrate. */
  readonly carbohydrateHolds: readonly Nature[];
  /** Substances this law counts as something else than chemistry does. */
  readonly countsAs: { readonly [species in SpeciesId]?: Nature | undefined };
  /** What claims by the portion are measured on, g. */
  readonly referenceG: Cited;
  /** Up to here a claim by the portion is also measured on 50 g. */
  readonly smallReferenceG: Cited;
  readonly claims: readonly ClaimRule[];
  readonly statements: readonly StatementRule[];
  readonly doses: readonly DoseRule[];
  readonly rounding: { readonly [nutrient in LabelNutrient]?: RoundingRule | undefined };
};

/** Why a figure cannot decide. */
export type AnalysisReason = 'isomalt-may-free-sugar' | 'limit-lies-in-the-band';

/** A claim, tested. Never a permission: law differs, changes, and asks for more than figures. */
export type LabelTest = {
  readonly id: ClaimId;
  readonly kind: 'met' | 'not-met' | 'needs-analysis';
  readonly because?: AnalysisReason | undefined;
  /** The condition that decides: the first that fails, or the one with least room. */
  readonly quantity: ClaimQuantity;
  readonly per: ClaimPortion;
  readonly passes: Passes;
  readonly value: number;
  readonly limit: number;
  readonly rule: SourceId;
  readonly locator?: string | undefined;
  readonly grade: Grade;
};

/** A statement the rules ask for, with its numbers. */
export type LabelStatement = {
  readonly id: StatementId;
  readonly subject?: SpeciesId | undefined;
  readonly numbers: Readonly<Record<string, number>>;
  readonly rule: SourceId;
  readonly locator?: string | undefined;
  readonly grade: Grade;
};

/** A substance with a legal limit beside what the sweet holds. */
export type DoseTest = {
  readonly species: SpeciesId;
  readonly kind: 'within' | 'over';
  readonly massFraction: number;
  readonly limitMassFraction: number;
  readonly rule: SourceId;
  readonly locator?: string | undefined;
  readonly grade: Grade;
};
